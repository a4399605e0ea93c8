package org.firnline.app.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.firnline.app.demo.HarrowFenCollection;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;

/** Care of the demo laboratory: what was put wrong into its two years is found. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CarePagesTest {
  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private ConfigurableApplicationContext served;
  private URI home;

  @BeforeAll
  void serve(@TempDir Path folder) {
    served = WebApplication.start(new DataFolder(folder), 0);
    served.getBean(HarrowFenCollection.class).fill();
    home = URI.create(WebApplication.address(served));
  }

  @AfterAll
  void stop() {
    served.close();
  }

  private String get(String path) throws IOException, InterruptedException {
    HttpResponse<String> answer =
        CLIENT.send(
            HttpRequest.newBuilder(home.resolve(path)).build(),
            HttpResponse.BodyHandlers.ofString());
    assertThat(answer.statusCode()).isEqualTo(200);
    return answer.body();
  }

  /** The page's part about one dryer. */
  private static String about(String dryer, String page) {
    int from = page.indexOf("aria-label=\"" + dryer + "\"");
    int to = page.indexOf("</section>", from);
    return page.substring(from, to);
  }

  @Test
  void findsTheFailingPumpAndTheDriftingGaugeAndNothingOnTheQuietDryer() throws Exception {
    String page = get("/care");
    assertThat(about("Fen 1", page)).contains("no figure of").doesNotContain("Look first");
    assertThat(about("Fen 2", page)).contains("Look first at the pump");
    assertThat(about("Fen 3", page)).contains("Look first at the gauges");
    assertThat(about("Fen 3", page)).doesNotContain("Look first at the pump");
    assertThat(page).contains("Pump oil", "due", "Culture collection");
  }

  @Test
  void givesHoursAndRunsByGroupAsATable() throws Exception {
    assertThat(get("/care/use.csv"))
        .startsWith("started_utc,dryer,group,run,hours\n")
        .contains("\"Fen 2\"", "\"Botany\"");
  }

  @Test
  void showsPredictionsBesideWhatHappenedAndWhatLearningBrought() throws Exception {
    String page = get("/library/predictions");
    assertThat(page).contains("Bog-myrtle extract in 10R", "bands held", "history-bands");
    assertThat(page).contains("30\u202f%");
  }
}
