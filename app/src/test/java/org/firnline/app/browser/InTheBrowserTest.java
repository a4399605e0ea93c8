package org.firnline.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.firnline.app.demo.HarrowFenCollection;
import org.firnline.app.store.DataFolder;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.springframework.context.ConfigurableApplicationContext;

/** A person with a browser plans a run and reviews a log, at a desk and with a phone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InTheBrowserTest {
  private static final String HIDDEN_AT_THE_RIGHT =
      "return [...document.querySelectorAll(arguments[0])].some(table => {"
          + "const box = table.closest('.scroll') ?? table.parentElement;"
          + "return box.scrollWidth > box.clientWidth; });";

  @TempDir private static Path folder;

  private ConfigurableApplicationContext served;
  private String home;
  private Browser browser;

  @BeforeAll
  void serve() {
    served = WebApplication.start(new DataFolder(folder), 0);
    served.getBean(HarrowFenCollection.class).fill();
    home = WebApplication.address(served);
  }

  @AfterAll
  void stop() {
    served.close();
  }

  @AfterEach
  void nothingWentWrong() {
    if (browser != null) {
      try {
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requestsElsewhere()).isEmpty();
      } finally {
        browser.close();
        browser = null;
      }
    }
  }

  /** The watch over every other test here must itself be able to see something. */
  @Test
  void a_script_error_a_refused_request_and_a_foreign_address_are_seen() throws IOException {
    try (Browser watched = Browser.wide(1280)) {
      List<String> complaints = new ArrayList<>();
      watched.open(home);
      watched.run("setTimeout(() => { throw new Error('made for this test'); });");
      watched.run("fetch('http://127.0.0.1:1/refused').catch(() => {});");
      watched.waitFor(
          "the complaints",
          () -> {
            complaints.addAll(watched.complaints());
            String all = String.join(" ", complaints);
            return all.contains("made for this test") && all.contains("127.0.0.1:1/refused");
          });
      watched.open("data:text/html,<img src='http://127.0.0.1:1/elsewhere.png'>");
      watched.waitFor(
          "the foreign request",
          () -> watched.requestsElsewhere().contains("http://127.0.0.1:1/elsewhere.png"));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void today_says_what_every_dryer_does(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home);
    assertThat(browser.all(".dryer")).hasSize(3);
    assertThat(browser.textOf(".dryers")).contains("Fen 1", "Fen 2", "Fen 3", "primary drying");
    assertThat(browser.textOf("body")).contains("Invented data of the Harrow Fen Collection");
    assertThat(browser.scrollsSideways()).isFalse();
    browser.picture("today-" + width);
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void a_plan_answers_while_it_is_typed(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + "plan");
    String first = browser.textOf(".headline-done");
    assertThat(first).startsWith("Dry ");
    browser.waitFor("the window map", () -> browser.all(".map-canvas").size() == 1);
    type("vessel.fill", "2 mL");
    browser.waitFor("a shorter run", () -> !browser.textOf(".headline-done").equals(first));
    type("recipe.shelf", "-20");
    type("recipe.pressure", "80 mTorr");
    browser.waitFor("the hold", () -> browser.textOf(".headline").contains("−20.0"));
    assertThat(browser.textOf(".headline")).contains("Your hold", "11");
    assertThat(browser.textOf(".checks")).contains("too warm");
    assertThat(browser.scrollsSideways()).isFalse();
    browser.picture("plan-" + width);
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void what_cannot_be_used_is_said_beside_the_field_and_stays(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + "plan");
    browser.waitFor("the window map", () -> browser.all(".map-canvas").size() == 1);
    type("vessel.fill", "3 bananas");
    browser.waitFor(
        "the problem", () -> browser.all("[data-path='vessel.fill'] .problem").size() == 1);
    assertThat(field("vessel.fill").getDomProperty("value")).isEqualTo("3 bananas");
    assertThat(browser.all(".map-canvas")).hasSize(1);
    browser.picture("plan-problem-" + width);
    type("vessel.fill", "3 mL");
    browser.waitFor("no problem", () -> browser.all(".questions .problem").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(ints = {390})
  void a_question_is_answered_while_it_is_typed(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + "ask/collector");
    String first = browser.textOf(".ask-advice");
    browser.the("#q-count").sendKeys("6000");
    browser.waitFor("another answer", () -> !browser.textOf(".ask-advice").equals(first));
    assertThat(browser.textOf(".ask-advice")).contains("stop");
    assertThat(browser.address()).contains("count=6000");
    browser.the("#q-count").sendKeys(" bananas");
    browser.waitFor("the problem", () -> browser.all(".question .problem").size() == 1);
    assertThat(browser.scrollsSideways()).isFalse();
    browser.picture("ask-" + width);
  }

  @ParameterizedTest
  @ValueSource(ints = {1280})
  void the_recipe_moves_in_the_map_by_keyboard(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + "plan");
    WebElement map = browser.the(".map-stage");
    map.sendKeys(Keys.ARROW_UP);
    browser.waitFor("a chosen hold", () -> browser.textOf(".headline").contains("Your hold"));
    assertThat(field("recipe.shelf").getDomProperty("value")).contains("°C");
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void a_plan_is_saved_and_opened_again(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + "plan");
    browser.waitFor("the window map", () -> browser.all(".map-canvas").size() == 1);
    browser.the("#plan-title").sendKeys("Heather honey, " + width);
    browser.run("document.querySelector('#plan-form button.first').click()");
    browser.waitFor("the saved plan", () -> browser.address().matches(".*/plan/[0-9]+"));
    assertThat(browser.the("#plan-title").getDomProperty("value"))
        .isEqualTo("Heather honey, " + width);
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void a_log_is_brought_in_and_reviewed(int width) throws IOException {
    browser = Browser.wide(width);
    Path log = folder.resolve("given-" + width + ".csv");
    try (var given = InTheBrowserTest.class.getResourceAsStream("/demo/log05-quoted-missing.csv")) {
      String text = new String(given.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
      Files.writeString(log, text.replace("HFC-88", "HFC-" + width));
    }
    browser.open(home + "runs");
    browser.picture("runs-" + width);
    assertThat((Boolean) browser.run(HIDDEN_AT_THE_RIGHT, ".run-list")).isFalse();
    browser.the("#log").sendKeys(log.toString());
    browser.the("#drop button").click();
    browser.waitFor("the run", () -> browser.address().matches(".*/runs/[0-9]+"));
    browser.waitFor("the picture", () -> browser.all(".chart-canvas").size() == 1);
    assertThat(browser.textOf(".findings")).contains("product above critical temperature");
    assertThat(browser.all(".chart-badges .badge")).isNotEmpty();
    browser.all("[data-finding]").get(0).click();
    assertThat(browser.all(".finding-list > li.chosen")).hasSize(1);
    browser.the("[data-zoom=reset]").click();
    browser.the(".chart-stage").sendKeys("+", Keys.ARROW_RIGHT);
    assertThat(browser.textOf(".chart-readout")).contains("min");
    browser.the(".chart-stage").sendKeys("0");
    assertThat((Boolean) browser.run(HIDDEN_AT_THE_RIGHT, ".stacks")).isFalse();
    assertThat(browser.scrollsSideways()).isFalse();
    browser.picture("run-" + width);
  }

  @ParameterizedTest
  @ValueSource(ints = {390})
  void a_file_that_is_no_log_is_kept_and_said_so(int width) throws IOException {
    browser = Browser.wide(width);
    Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear colleague,\n");
    browser.open(home + "runs");
    browser.the("#log").sendKeys(letter.toString());
    browser.the("#drop button").click();
    browser.waitFor("the words", () -> browser.all("#drop-problem").size() == 1);
    assertThat(browser.textOf("#drop-problem")).contains("letter.txt", "kept");
    browser.picture("runs-problem-" + width);
    // The answer says 422, which the browser notes; nothing else may be wrong.
    assertThat(browser.complaints()).allMatch(text -> text.contains("422"));
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void a_plan_file_is_opened_and_its_problems_are_said(int width) throws IOException {
    browser = Browser.wide(width);
    Path good = folder.resolve("good-" + width + ".yaml");
    Files.writeString(good, "plan: From a file\nvessel: {type: 6R, fill: 2 mL}\ncount: 40\n");
    browser.open(home + "plan");
    browser.the("#plan-file").sendKeys(good.toString());
    browser.the(".open-file button").click();
    browser.waitFor(
        "the opened plan",
        () -> "From a file".equals(browser.the("#plan-title").getDomProperty("value")));
    assertThat(field("vessel.fill").getDomProperty("value")).isEqualTo("2 mL");
    assertThat(browser.textOf(".headline-done")).startsWith("Dry ");

    Path bad = folder.resolve("bad-" + width + ".yaml");
    Files.writeString(bad, "vesel: {type: 6R}\nvessel: {type: 6R, fill: 2 kg}\ncount: 40\n");
    browser.the("#plan-file").sendKeys(bad.toString());
    browser.the(".open-file button").click();
    browser.waitFor(
        "the problems", () -> browser.textOf(".answer").contains("did you mean 'vessel'?"));
    assertThat(browser.textOf("[data-path='vessel.fill']")).contains("not a unit of volume");
    assertThat(field("vessel.fill").getDomProperty("value")).isEqualTo("2 kg");
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void the_picture_of_a_run_can_be_read_as_a_table(int width) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + "runs");
    browser.all(".run-list a").get(0).click();
    browser.waitFor("the picture", () -> browser.all(".chart-canvas").size() == 1);
    browser.the(".run-chart details summary").click();
    assertThat(browser.all(".run-chart tbody tr")).hasSize(25);
    assertThat(browser.textOf(".run-chart table")).contains("°C", "Pa");
    assertThat(browser.scrollsSideways()).isFalse();
  }

  private WebElement field(String path) {
    return browser.the("[name='" + path + "']");
  }

  private void type(String path, String text) {
    WebElement field = field(path);
    field.clear();
    field.sendKeys(text);
  }
}
