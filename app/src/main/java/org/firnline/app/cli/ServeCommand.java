package org.firnline.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code firnline serve}: the pages of one laboratory, for people at this machine. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description = "Serves the pages on this machine (loopback address only).")
final class ServeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "The laboratory's folder (default: ${DEFAULT-VALUE}).")
  private Path data = Path.of("firnline-data");

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "The port to listen on (default: ${DEFAULT-VALUE}).")
  private int port = Port.USUAL;

  @Mixin private StoreOption store = new StoreOption();

  ServeCommand() {}

  @Override
  public Integer call() {
    Port.mustBeFree(port);
    DataFolder folder = new DataFolder(data);
    var running = WebApplication.start(folder, port, store.asSetting(folder));
    Started.say(spec, "Firnline serves " + data + " at", WebApplication.address(running));
    return FirnlineCommand.STILL_SERVING;
  }
}
