package org.firnline.app.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;

/** The pages of learning as a browser without scripts meets them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LearningPagesTest {
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\"[^>]*value=\"([^\"]+)\"");
  private static final Path EXAMPLES = Path.of("..", "docs", "examples");

  private final HttpClient client =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
  private ConfigurableApplicationContext served;
  private URI home;

  @BeforeAll
  void serve(@TempDir Path folder) {
    served = WebApplication.start(new DataFolder(folder), 0);
    home = URI.create(WebApplication.address(served));
  }

  @AfterAll
  void stop() {
    served.close();
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(home.resolve(path)).build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<String> paste(String sheet) throws IOException, InterruptedException {
    Matcher token = TOKEN.matcher(get("/library/ice-run").body());
    assertThat(token.find()).isTrue();
    String mark = "firnline-test-mark";
    String part = "--" + mark + "\r\nContent-Disposition: form-data; name=\"";
    String body =
        part
            + "_csrf\"\r\n\r\n"
            + token.group(1)
            + "\r\n"
            + part
            + "files\"; filename=\"\"\r\n\r\n\r\n"
            + part
            + "pasted\"\r\n\r\n"
            + sheet
            + "\r\n--"
            + mark
            + "--\r\n";
    return client.send(
        HttpRequest.newBuilder(home.resolve("/library/ice-run"))
            .header("Content-Type", "multipart/form-data; boundary=" + mark)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build(),
        HttpResponse.BodyHandlers.ofString());
  }

  @Test
  void guidesThroughAnIceRunAndGivesTheSheet() throws Exception {
    assertThat(get("/library/ice-run").body()).contains("two thirds of the ice", "goggles");
    HttpResponse<String> sheet = get("/library/ice-run/sheet.csv");
    assertThat(sheet.headers().firstValue("Content-Type").orElse("")).startsWith("text/csv");
    assertThat(sheet.body()).contains("shelf temperature,", "vessel,position,before (g)");
  }

  @Test
  void evaluatesAPastedSheet() throws Exception {
    HttpResponse<String> answer = paste(Files.readString(EXAMPLES.resolve("ice-run-12pa.csv")));
    assertThat(answer.statusCode()).isEqualTo(200);
    assertThat(answer.body()).contains("corner", "W/(m²", "of the doubt from the");
  }

  @Test
  void keepsWhatWasPastedAndSaysWhatIsWrong() throws Exception {
    HttpResponse<String> answer = paste("ice run,my own words\n");
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("my own words", "is missing or empty");
    assertThat(paste(" ").body()).contains("Choose a filled sheet");
  }
}
