package org.firnline.app.cli;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.firnline.app.security.Sharing;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ConfigurableApplicationContext;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code firnline serve}: the pages of one laboratory, for one person or for several. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description = "Serves the pages on this machine, or with --share to people who sign in.")
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

  @Option(
      names = "--share",
      description = {
        "Everybody signs in from now on; stays so at later starts.",
        "The first start prints a link for the first account."
      })
  private boolean share;

  @Option(
      names = "--address",
      paramLabel = "IP",
      description = "The address to listen on (default: ${DEFAULT-VALUE}); others need --share.")
  private String address = "127.0.0.1";

  @Option(
      names = "--host",
      paramLabel = "NAME",
      description = "A name under which browsers reach this machine; may be repeated.")
  private List<String> hosts = List.of();

  @Option(
      names = "--certificate",
      paramLabel = "FILE",
      description = {
        "A PKCS #12 file with key and certificate, for https.",
        "FIRNLINE_CERTIFICATE_PASSWORD holds its password."
      })
  private @Nullable Path certificate;

  @Mixin private StoreOption store = new StoreOption();

  ServeCommand() {}

  @Override
  public Integer call() {
    Port.mustBeFree(port);
    mustBeAllowed();
    DataFolder folder = new DataFolder(data);
    ConfigurableApplicationContext running = WebApplication.start(folder, port, settings(folder));
    String home = home(running);
    Started.say(spec, "Firnline serves " + data + " at", home);
    running
        .getBean(Sharing.class)
        .setupSecret()
        .ifPresent(secret -> Started.invite(spec, home + "invitation/" + secret));
    return FirnlineCommand.STILL_SERVING;
  }

  private void mustBeAllowed() {
    try {
      if (!share && !InetAddress.getByName(address).isLoopbackAddress()) {
        throw new BadInput(
            "The address "
                + address
                + " can be reached by others. Add --share to have them sign in.");
      }
    } catch (UnknownHostException e) {
      throw new BadInput("The address " + address + " is not one of this machine.");
    }
  }

  private Map<String, Object> settings(DataFolder folder) {
    Map<String, Object> settings = new HashMap<>(store.asSetting(folder));
    settings.put("server.address", address);
    settings.put("firnline.share", Boolean.toString(share));
    settings.put("firnline.hosts", String.join(",", hosts));
    if (certificate != null) {
      GivenFile.mustExist(certificate);
      settings.put("server.ssl.key-store", certificate.toAbsolutePath().toUri().toString());
      settings.put("server.ssl.key-store-type", "PKCS12");
      settings.put("server.ssl.key-store-password", password());
      settings.put("server.servlet.session.cookie.secure", "true");
    } else if (share && !address.startsWith("127.")) {
      Started.warn(
          spec, "Without --certificate, passwords cross the network readable. Use it, or a proxy.");
    }
    return settings;
  }

  private static String password() {
    return System.getenv().getOrDefault("FIRNLINE_CERTIFICATE_PASSWORD", "");
  }

  private String home(ConfigurableApplicationContext running) {
    String local = WebApplication.address(running);
    String scheme = certificate == null ? "http://" : "https://";
    String host = hosts.isEmpty() ? "localhost" : hosts.get(0);
    return scheme + host + local.substring(local.lastIndexOf(':'));
  }
}
