package org.firnline.app.web;

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
    SpringApplication application = new SpringApplication(WebApplication.class);
    application.setBannerMode(Banner.Mode.OFF);
    application.setLogStartupInfo(false);
    application.setDefaultProperties(
        Map.of("firnline.data", folder.root().toString(), "server.port", port));
    return application.run();
  }

  /** The address people type to reach a running application. */
  public static String address(ConfigurableApplicationContext running) {
    return "http://localhost:" + running.getEnvironment().getProperty("local.server.port") + "/";
  }
}
