package org.firnline.app.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.firnline.app.demo.HarrowFenCollection;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page of a run as it is asked for and answered. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RunPageTest {
  private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

  private final HttpClient client =
      HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

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

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(home.resolve(path)).build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(home.resolve(path)).build(),
        HttpResponse.BodyHandlers.ofByteArray());
  }

  private String token() throws IOException, InterruptedException {
    Matcher token = TOKEN.matcher(get("/runs/1").body());
    assertThat(token.find()).isTrue();
    return token.group(1);
  }

  private HttpResponse<String> post(String path, Map<String, String> fields)
      throws IOException, InterruptedException {
    String body =
        fields.entrySet().stream()
            .map(field -> field.getKey() + "=" + encoded(field.getValue()))
            .collect(Collectors.joining("&", "_csrf=" + encoded(token()) + "&", ""));
    HttpRequest request =
        HttpRequest.newBuilder(home.resolve(path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    return client.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private HttpResponse<String> attach(int run, String name, byte[] content)
      throws IOException, InterruptedException {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    String head =
        "--cut\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n"
            + token()
            + "\r\n--cut\r\nContent-Disposition: form-data; name=\"caption\"\r\n\r\ncake of vial 3"
            + "\r\n--cut\r\nContent-Disposition: form-data; name=\"file\"; filename=\""
            + name
            + "\"\r\nContent-Type: text/html\r\n\r\n";
    body.write(head.getBytes(StandardCharsets.UTF_8));
    body.write(content);
    body.write("\r\n--cut--\r\n".getBytes(StandardCharsets.UTF_8));
    HttpRequest request =
        HttpRequest.newBuilder(home.resolve("/runs/" + run + "/attachments"))
            .header("Content-Type", "multipart/form-data; boundary=cut")
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
            .build();
    return client.send(request, HttpResponse.BodyHandlers.ofString());
  }

  private static JsonNode picture(String page) {
    Matcher attribute = Pattern.compile("data-picture=\"([^\"]*)\"").matcher(page);
    assertThat(attribute.find()).isTrue();
    String json =
        attribute.group(1).replace("&quot;", "\"").replace("&#39;", "'").replace("&amp;", "&");
    return JsonMapper.shared().readTree(json);
  }

  @Nested
  class ThePicture {
    @Test
    void namesTheLinesThatShowAFinding() throws Exception {
      JsonNode marks = picture(get("/runs/3").body()).get("marks");
      assertThat(marks.size()).isPositive();
      JsonNode evidence = marks.get(0).get("evidence").get(0);
      assertThat(evidence.get("keys").size()).isPositive();
      assertThat(evidence.get("from_s").doubleValue())
          .isLessThanOrEqualTo(evidence.get("to_s").doubleValue());
    }

    @Test
    void hasOnlyThePanesThatHoldSomething() throws Exception {
      JsonNode panes = picture(get("/runs/1").body()).get("panes");
      double shares = 0;
      for (JsonNode pane : panes) {
        shares += pane.get("share").doubleValue();
      }
      assertThat(shares).isCloseTo(1, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void comesFinerForAStretch() throws Exception {
      JsonNode part =
          JsonMapper.shared().readTree(get("/runs/3/series?from=3600&to=7200&pixels=500").body());
      JsonNode times = part.get("t");
      assertThat(times.get(0).doubleValue()).isBetween(3_400.0, 3_600.0);
      assertThat(times.get(times.size() - 1).doubleValue()).isBetween(7_140.0, 7_260.0);
      for (JsonNode line : part.get("lines")) {
        assertThat(line.get("lo").size()).isEqualTo(times.size());
        assertThat(line.get("hi").size()).isEqualTo(times.size());
      }
    }

    @Test
    void isSaidInWords() throws Exception {
      assertThat(get("/runs/3").body())
          .contains("The run took 52", "primary drying", "The ice was gone", "Temperatures from");
    }
  }

  @Nested
  class ASecondRun {
    @Test
    void isBroughtTogetherAtThePhaseAskedFor() throws Exception {
      String page = get("/runs/3?with=4&at=" + encoded("secondary drying")).body();
      JsonNode other = picture(page).get("other");
      double here = begin(page, "secondary drying");
      double there = begin(get("/runs/4").body(), "secondary drying");
      assertThat(other.get("offset_s").doubleValue())
          .isCloseTo(here - there, org.assertj.core.api.Assertions.within(1e-6));
      assertThat(page).contains("both from the begin of secondary drying");
      assertThat(page).containsPattern("primary drying took [^<]* (longer|less) here");
    }

    @Test
    void standsAtTheStartWhereThatIsAskedFor() throws Exception {
      String page = get("/runs/3?with=4&at=start").body();
      assertThat(picture(page).get("other").get("offset_s").doubleValue()).isZero();
    }

    @Test
    void isLeftOutWhereThereIsNone() throws Exception {
      assertThat(picture(get("/runs/3?with=3").body()).has("other")).isFalse();
      assertThat(picture(get("/runs/3?with=999").body()).has("other")).isFalse();
      assertThat(picture(get("/runs/3?with=").body()).has("other")).isFalse();
    }

    private double begin(String page, String phase) {
      for (JsonNode drawn : picture(page).get("phases")) {
        if (drawn.get("name").stringValue().equals(phase)) {
          return drawn.get("from_s").doubleValue();
        }
      }
      throw new AssertionError("no phase " + phase);
    }
  }

  @Test
  void the_plan_lies_where_it_is_put() throws Exception {
    double atStart = planBegin("/runs/3?planAt=start");
    double atPrimary = planBegin("/runs/3");
    assertThat(atStart).isZero();
    assertThat(atPrimary).isGreaterThan(3_600);
  }

  private double planBegin(String path) throws IOException, InterruptedException {
    return picture(get(path).body()).get("bands").get(0).get("t").get(0).doubleValue();
  }

  @Test
  void the_ice_is_judged_and_the_plan_stands_beside_what_happened() throws Exception {
    assertThat(get("/runs/3").body())
        .contains("Verdict: is the ice gone?", "ice gone", "Plan against actual")
        .containsPattern("data-label=\"Shelf\"[^>]*>−[0-9.]+[^<]*→ −25");
    assertThat(get("/runs/1").body()).doesNotContain("Plan against actual");
  }

  @Nested
  class Files {
    @Test
    void ofFiguresHoldTheStretchInSight() throws Exception {
      HttpResponse<String> file = get("/runs/3/channels.csv?from=3600&to=7200");
      assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
          .startsWith("attachment");
      assertThat(file.headers().firstValue("Content-Type").orElse("")).contains("text/csv");
      assertThat(file.body().lines().count()).isEqualTo(62);
      assertThat(file.body().lines().skip(1).findFirst().orElseThrow()).startsWith("3600,");
      assertThat(get("/runs/3/channels.csv?units=si").body()).contains("[K]", "[Pa]");
      JsonNode json =
          JsonMapper.shared().readTree(get("/runs/3/channels.json?from=0&to=60").body());
      assertThat(json.get("elapsed_s").size()).isEqualTo(2);
    }

    @Test
    void ofTheReviewAreThoseOfTheCommand() throws Exception {
      JsonNode review = JsonMapper.shared().readTree(get("/runs/3/review.json").body());
      assertThat(review.get("phases").size()).isEqualTo(5);
      assertThat(review.get("findings").size()).isPositive();
    }
  }

  @Nested
  class Notes {
    @Test
    void standInTheListAndOnThePicture() throws Exception {
      assertThat(post("/runs/3/notes", Map.of("text", "door <opened>", "at", "12,5")).statusCode())
          .isEqualTo(302);
      String page = get("/runs/3").body();
      assertThat(page).contains("door &lt;opened&gt;").doesNotContain("door <opened>");
      JsonNode event = last(picture(page).get("events"));
      assertThat(event.get("t_s").doubleValue()).isEqualTo(45_000);
      assertThat(event.get("kind").stringValue()).isEqualTo("note");
    }

    @Test
    void haveATimeOfTheClockOrNow() throws Exception {
      post("/runs/1/notes", Map.of("text", "flask seven cracked", "at", "2031-02-03T04:05"));
      post("/runs/1/notes", Map.of("text", "looked after it"));
      assertThat(get("/runs/1").body()).contains("3 Feb 04:05", "looked after it");
    }

    @Test
    void areWithdrawnButStayReadable() throws Exception {
      post("/runs/2/notes", Map.of("text", "wrong run"));
      Matcher form =
          Pattern.compile("/runs/2/notes/([0-9]+)/withdraw").matcher(get("/runs/2").body());
      assertThat(form.find()).isTrue();
      post(form.group(), Map.of());
      assertThat(get("/runs/2").body())
          .contains("wrong run", "withdrawn")
          .doesNotContain(form.group());
      for (JsonNode event : picture(get("/runs/2").body()).get("events")) {
        assertThat(event.get("text").stringValue()).isNotEqualTo("wrong run");
      }
    }

    @Test
    void thatCannotBeKeptComeBackWithTheReason() throws Exception {
      String page = post("/runs/3/notes", Map.of("text", "typed long", "at", "at noon")).body();
      assertThat(page).contains("typed long", "at noon", "This is no time");
      assertThat(post("/runs/3/notes", Map.of("text", " ")).body()).contains("Write what happened");
      assertThat(post("/runs/3/notes", Map.of("text", "a", "at", "2026-99-99T00:00")).body())
          .contains("This is no time");
      assertThat(post("/runs/999/notes", Map.of("text", "a")).statusCode()).isEqualTo(404);
    }

    private JsonNode last(JsonNode list) {
      return list.get(list.size() - 1);
    }
  }

  @Nested
  class Attachments {
    @Test
    void comeBackByteForByteAndCanDoNothing() throws Exception {
      byte[] photo = photo();
      assertThat(attach(3, "../cake.jpg", photo).statusCode()).isEqualTo(302);
      Matcher link =
          Pattern.compile("/runs/3/attachments/[0-9]+(?=\")").matcher(get("/runs/3").body());
      assertThat(link.find()).isTrue();
      HttpResponse<byte[]> file = bytes(link.group());
      assertThat(file.body()).isEqualTo(photo);
      assertThat(file.headers().firstValue("Content-Type")).contains("image/jpeg");
      assertThat(file.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
      assertThat(file.headers().allValues("Content-Security-Policy").toString())
          .contains("sandbox");
      assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
          .startsWith("attachment")
          .contains("cake.jpg")
          .doesNotContain("..");
      HttpResponse<byte[]> small = bytes(link.group() + "/small");
      assertThat(small.headers().firstValue("Content-Type")).contains("image/jpeg");
      assertThat(small.body()).startsWith(0xff, 0xd8);
      assertThat(bytes(link.group().replace("/3/", "/4/")).statusCode()).isEqualTo(404);
    }

    @Test
    void areOnlyOfKindsThatDoNoHarm() throws Exception {
      byte[] page = "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8);
      assertThat(attach(3, "a.html", page).body()).contains("none of the kinds", "cake of vial 3");
      assertThat(attach(3, "a.jpg", page).body()).contains("none of the kinds");
      assertThat(attach(3, "a.jpg", new byte[0]).body()).contains("Choose a file first");
      assertThat(attach(999, "a.jpg", photo()).statusCode()).isEqualTo(404);
    }

    @Test
    void areWithdrawnButStayThere() throws Exception {
      attach(4, "assay.txt", "water 1.1 %".getBytes(StandardCharsets.UTF_8));
      Matcher form =
          Pattern.compile("(/runs/4/attachments/[0-9]+)/withdraw").matcher(get("/runs/4").body());
      assertThat(form.find()).isTrue();
      post(form.group(), Map.of());
      assertThat(get("/runs/4").body()).contains("assay.txt", "withdrawn");
      assertThat(get(form.group(1)).body()).isEqualTo("water 1.1 %");
      assertThat(bytes(form.group(1) + "/small").statusCode()).isEqualTo(404);
    }

    private byte[] photo() throws IOException {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageIO.write(new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB), "jpg", bytes);
      return bytes.toByteArray();
    }
  }
}
