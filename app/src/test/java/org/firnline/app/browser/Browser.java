package org.firnline.app.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real browser without a window, at one width, that remembers what it asked for and what went
 * wrong.
 */
final class Browser implements AutoCloseable {
  private static final Pattern ADDRESS = Pattern.compile("\"url\":\"([a-z]+:[^\"]*)\"");
  private static final Duration PATIENCE = Duration.ofSeconds(60);
  private static final Path PICTURES = Path.of("target", "screens");

  private final ChromeDriver driver;

  private Browser(ChromeDriver driver) {
    this.driver = driver;
  }

  /** Opens one as wide as {@code width} pixels. */
  static Browser wide(int width) throws IOException {
    ChromeOptions options = new ChromeOptions();
    options.setBinary("/usr/bin/chromium");
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--force-color-profile=srgb",
        "--lang=en-GB",
        "--user-data-dir=" + Files.createTempDirectory("firnline-browser"));
    options.setExperimentalOption(
        "mobileEmulation",
        Map.of(
            "deviceMetrics",
            Map.of(
                "width",
                width,
                "height",
                900,
                "pixelRatio",
                1.0,
                "touch",
                false,
                "mobile",
                width < 600)));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    options.setCapability("goog:loggingPrefs", logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(new java.io.File("/usr/bin/chromedriver"))
            .build();
    return new Browser(new ChromeDriver(service, options));
  }

  void open(String address) {
    driver.get(address);
  }

  String address() {
    return driver.getCurrentUrl();
  }

  WebElement the(String selector) {
    return new WebDriverWait(driver, PATIENCE).until(d -> d.findElement(By.cssSelector(selector)));
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  String textOf(String selector) {
    return the(selector).getText();
  }

  void waitFor(String what, java.util.function.BooleanSupplier condition) {
    new WebDriverWait(driver, PATIENCE)
        .withMessage(what)
        .ignoring(StaleElementReferenceException.class)
        .until(d -> condition.getAsBoolean());
  }

  Object run(String script, Object... arguments) {
    return ((JavascriptExecutor) driver).executeScript(script, arguments);
  }

  /** Runs a script that gives its answer to its last argument, later. */
  Object runLater(String script, Object... arguments) {
    return ((JavascriptExecutor) driver).executeAsyncScript(script, arguments);
  }

  /** Whether the page is wider than the window. */
  boolean scrollsSideways() {
    return (Boolean)
        run("return document.documentElement.scrollWidth > document.documentElement.clientWidth;");
  }

  /** Keeps a picture of the whole page for people to look at. */
  void picture(String name) {
    try {
      Files.createDirectories(PICTURES);
      Map<String, Object> shot =
          driver.executeCdpCommand(
              "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "format", "png"));
      Files.write(
          PICTURES.resolve(name + ".png"),
          java.util.Base64.getDecoder().decode((String) shot.get("data")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Everything the browser complained about: script errors, refused content, missing files. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(LogEntry::getMessage)
        .toList();
  }

  /** Addresses asked for that are not on this machine. */
  List<String> requestsElsewhere() {
    return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(LogEntry::getMessage)
        .filter(message -> message.contains("Network.requestWillBeSent\""))
        .flatMap(message -> ADDRESS.matcher(message).results().map(found -> found.group(1)))
        .filter(address -> address.matches("(http|ws|ftp)s?://.*"))
        .filter(address -> !address.startsWith("http://localhost:"))
        .toList();
  }

  @Override
  public void close() {
    driver.quit();
  }
}
