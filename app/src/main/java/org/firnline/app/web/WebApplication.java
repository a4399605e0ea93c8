package org.firnline.app.web;

import java.util.HashMap;
import java.util.Map;
import org.firnline.app.store.DataFolder;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.security.autoconfigure.UserDetailsServiceAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;

/** The web application: every page and the JSON answers, on the loopback address only. */
@SpringBootApplication(
    scanBasePackages = "org.firnline.app",
    exclude = UserDetailsServiceAutoConfiguration.class)
public class WebApplication {

  /**
   * Starts serving.
   *
   * @param folder the laboratory to serve
   * @param port 1 to 65535, or 0 for any free port
   * @return the running application; close it to stop serving
   */
  public static ConfigurableApplicationContext start(DataFolder folder, int port) {
    return start(folder, port, Map.of());
  }

  /**
   * Starts serving with further settings.
   *
   * @param settings by name, e.g. {@code firnline.store}
   */
  public static ConfigurableApplicationContext start(
      DataFolder folder, int port, Map<String, Object> settings) {
    SpringApplication application = new SpringApplication(WebApplication.class);
    application.setBannerMode(Banner.Mode.OFF);
    application.setLogStartupInfo(false);
    Map<String, Object> all = new HashMap<>(settings);
    all.putIfAbsent("server.address", "127.0.0.1");
    all.put("firnline.data", folder.root().toString());
    all.put("server.port", port);
    application.setDefaultProperties(all);
    return application.run();
  }

  /** The address people type to reach a running application. */
  public static String address(ConfigurableApplicationContext running) {
    return "http://localhost:" + running.getEnvironment().getProperty("local.server.port") + "/";
  }
}
