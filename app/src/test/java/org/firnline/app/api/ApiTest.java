package org.firnline.app.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.RawFiles;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The JSON interface as a program meets it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ApiTest {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  @TempDir private static Path folder;
  private ConfigurableApplicationContext served;
  private URI home;

  @BeforeAll
  void serve() {
    served = WebApplication.start(new DataFolder(folder), 0);
    home = URI.create(WebApplication.address(served));
  }

  @AfterAll
  void stop() {
    served.close();
  }

  private HttpResponse<String> post(String path, String type, byte[] body)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(home.resolve(path))
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body))
            .build();
    return CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private static byte[] resource(String name) throws IOException {
    try (InputStream in = ApiTest.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  private static JsonNode json(HttpResponse<String> answer) {
    return JsonMapper.shared().readTree(answer.body());
  }

  @Test
  void answersAPlan() throws Exception {
    var answer = post("/api/v1/plan", "application/yaml", resource("/plans/bog-myrtle.yaml"));
    assertThat(answer.statusCode()).isEqualTo(200);
    JsonNode plan = json(answer);
    assertThat(plan.path("hold").path("shelfTemperature_K").asDouble())
        .isCloseTo(251.15, within(1e-9));
    JsonNode time = plan.path("dryingTime_s");
    assertThat(time.path("low").asDouble())
        .isPositive()
        .isLessThan(time.path("best").asDouble())
        .isLessThan(time.path("high").asDouble());
    assertThat(plan.path("checks").size()).isGreaterThanOrEqualTo(9);
  }

  @Test
  void saysWhatIsWrongWithAPlanAsAProblem() throws Exception {
    var answer = post("/api/v1/plan", "application/json", "{\"count\": \"many\"}".getBytes());
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/problem+json");
    assertThat(json(answer).path("problems").size()).isEqualTo(3);
    assertThat(json(answer).path("detail").asString()).contains("count");
  }

  @Test
  void reviewsALogAndKeepsNothing() throws Exception {
    var answer =
        post(
            "/api/v1/reviews?name=log05.csv&criticalTemperature_K=242.15",
            "text/csv",
            resource("/demo/log05-quoted-missing.csv"));
    assertThat(answer.statusCode()).isEqualTo(200);
    JsonNode review = json(answer);
    assertThat(review.path("phases").size()).isEqualTo(5);
    assertThat(review.path("findings").get(0).path("kind").asString())
        .isEqualTo("product above critical temperature");
    assertThat(served.getBean(RawFiles.class).listWithoutRun()).isEmpty();
  }

  @Test
  void saysWhyAFileIsNoLog() throws Exception {
    var answer = post("/api/v1/reviews", "text/csv", "Dear colleague,\n".getBytes());
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(json(answer).path("reading").path("problems").size()).isPositive();
  }

  @Test
  void refusesBodiesThatAPageElsewhereCouldSend() throws Exception {
    var answer = post("/api/v1/plan", "text/plain", resource("/plans/bog-myrtle.yaml"));
    assertThat(answer.statusCode()).isEqualTo(415);
  }
}
