package org.firnline.app.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.firnline.app.demo.HarrowFenCollection;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code firnline demo}: an invented laboratory to look around in. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    description = {
      "Fills and serves the invented Harrow Fen Collection.",
      "A second start keeps what you did in it."
    })
final class DemoCommand implements Callable<Integer> {
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "The demo's folder (default: ${DEFAULT-VALUE}).")
  private Path data = Path.of("firnline-data", "demo");

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "The port to listen on (default: ${DEFAULT-VALUE}; any free one if taken).")
  private int port = Port.USUAL;

  @Mixin private StoreOption store = new StoreOption();

  DemoCommand() {}

  @Override
  public Integer call() {
    DataFolder folder = new DataFolder(data);
    var running = WebApplication.start(folder, Port.orAnyFree(port), store.asSetting(folder));
    running.getBean(HarrowFenCollection.class).fill();
    Started.say(
        spec,
        "The Harrow Fen Collection (invented data) is open at",
        WebApplication.address(running));
    return FirnlineCommand.STILL_SERVING;
  }
}
