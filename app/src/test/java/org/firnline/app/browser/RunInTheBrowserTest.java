package org.firnline.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import org.springframework.context.ConfigurableApplicationContext;

/** A person looks at a run: picture, findings, notes, a second run, files to save. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RunInTheBrowserTest {
  /** Keeps what the page would save as a file in {@code window.saved}. */
  private static final String CATCH_FILES =
      "window.saved = []; URL.createObjectURL = blob => { window.saved.push(blob); return '#'; };"
          + "HTMLAnchorElement.prototype.click = function () { window.savedAs = this.download; };";

  private static final String FILE_TEXT =
      "const done = arguments[0]; window.saved[0].text().then(done);";

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

  private void open(int width, String path) throws IOException {
    browser = Browser.wide(width);
    browser.open(home + path);
    browser.waitFor("the picture", () -> browser.all(".chart-canvas").size() == 1);
  }

  @Test
  void is_read_by_keyboard_alone() throws IOException {
    open(1280, "runs/3");
    browser.the(".chart-stage").sendKeys(Keys.HOME, Keys.ARROW_RIGHT);
    assertThat(browser.the(".chart-said").getDomProperty("textContent"))
        .contains("0\u202fh 31", "T_shelf", "°C", "p_pirani", "Pa");
    browser.the(".chart-stage").sendKeys("+", "+");
    browser.waitFor(
        "the stretch in the fields",
        () -> Double.parseDouble(browser.the("#stretch-to").getDomProperty("value")) < 20);
    browser.the(".chart-stage").sendKeys(Keys.END);
    assertThat(browser.the(".chart-said").getDomProperty("textContent")).contains("h", "Pa");
    browser.the(".chart-stage").sendKeys("0");
    assertThat(browser.the("#stretch-to").getDomProperty("value")).startsWith("52.1");
  }

  @ParameterizedTest
  @ValueSource(ints = {390})
  void goes_to_a_stretch_and_hides_lines_without_dragging(int width) throws IOException {
    open(width, "runs/3");
    browser.run(
        "const f = document.querySelector('#stretch-phase'); f.value = '2';"
            + "f.dispatchEvent(new Event('change'));");
    browser.waitFor(
        "primary drying",
        () -> browser.the("#stretch-from").getDomProperty("value").startsWith("4.4"));
    browser.run("document.querySelector('[data-line=c0]').click();");
    assertThat(browser.the("[data-line=c0]").getDomAttribute("aria-pressed")).isEqualTo("false");
    assertThat(browser.the("a[data-channels]").getDomProperty("href"))
        .contains("from=", "channels=c1");
    assertThat(browser.scrollsSideways()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(ints = {1280})
  void findings_and_picture_lead_to_each_other(int width) throws IOException {
    open(width, "runs/3");
    browser.all("button.finding").get(0).click();
    browser.waitFor(
        "a closer look",
        () -> Double.parseDouble(browser.the("#stretch-from").getDomProperty("value")) > 10);
    assertThat(browser.all(".chart-badges .badge.chosen")).hasSize(1);
    browser.picture("run-finding-" + width);
    browser.run("document.querySelectorAll('.chart-badges .badge:not([hidden])')[1].click();");
    assertThat(browser.the(".finding-list > li.chosen").getDomAttribute("id"))
        .isEqualTo("finding-2");
  }

  @ParameterizedTest
  @ValueSource(ints = {390})
  void a_note_is_kept_and_stands_on_the_picture(int width) throws IOException {
    open(width, "runs/3");
    browser.the(".chart-stage").sendKeys(Keys.HOME, Keys.ARROW_RIGHT);
    browser.the("#note-text").sendKeys("frost on the door, " + width);
    browser.the("[data-at-cursor]").click();
    assertThat(browser.the("#note-at").getDomProperty("value")).startsWith("0.5");
    browser.the(".add-note .first").click();
    browser.waitFor(
        "the note", () -> browser.textOf("#notes").contains("frost on the door, " + width));
    browser.waitFor("its flag", () -> !browser.all(".chart-flags .flag").isEmpty());
    browser.picture("run-note-" + width);
  }

  @Test
  void a_note_waits_in_the_browser_while_the_laboratory_is_out_of_reach() throws IOException {
    open(390, "runs/1");
    browser.run("window.reached = window.fetch; window.fetch = () => Promise.reject(new Error());");
    browser.the("#note-text").sendKeys("written in the cold room");
    browser.the(".add-note .first").click();
    browser.waitFor(
        "the words", () -> browser.textOf(".add-note").contains("Kept in this browser"));
    browser.run("window.fetch = window.reached; window.dispatchEvent(new Event('online'));");
    browser.waitFor(
        "the note",
        () ->
            !browser.all(".note-list").isEmpty()
                && browser.textOf(".note-list").contains("written in the cold room"));
  }

  @ParameterizedTest
  @ValueSource(ints = {390})
  void a_photo_is_put_with_the_run_and_shown_small(int width) throws IOException {
    open(width, "runs/4");
    Path photo = folder.resolve("cake-" + width + ".png");
    javax.imageio.ImageIO.write(
        new java.awt.image.BufferedImage(900, 600, java.awt.image.BufferedImage.TYPE_INT_RGB),
        "png",
        photo.toFile());
    browser.the("#file").sendKeys(photo.toString());
    browser.the("#caption").sendKeys("collapsed at the rim");
    browser.the(".add-file button").click();
    browser.waitFor("the file", () -> browser.textOf("#files").contains(photo.getFileName() + ""));
    browser.run("document.querySelectorAll('.file-list img').forEach(i => i.loading = 'eager');");
    browser.waitFor(
        "the small picture",
        () ->
            (Boolean)
                browser.run(
                    "return [...document.querySelectorAll('.file-list img')]"
                        + ".every(i => i.naturalWidth === 480);"));
    assertThat(browser.scrollsSideways()).isFalse();
    Files.delete(photo);
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void a_second_run_lies_beside_and_its_differences_are_said(int width) throws IOException {
    open(width, "runs/3?with=4&at=primary+drying");
    assertThat(browser.textOf(".differences"))
        .contains("Sedge seed extract", "begin of primary drying", "here");
    assertThat(browser.all(".chart-labels .other")).isNotEmpty();
    assertThat(browser.scrollsSideways()).isFalse();
    browser.picture("run-beside-" + width);
  }

  @Test
  void the_picture_is_saved_as_drawing_and_as_pixels() throws IOException {
    open(1280, "runs/3");
    browser.run(CATCH_FILES + "document.querySelector('[data-save=svg]').click();");
    String svg = browser.runLater(FILE_TEXT).toString();
    assertThat(svg)
        .startsWith("<?xml")
        .contains("<svg", "primary drying", "product above critical temperature", "T_shelf")
        .doesNotContain("NaN", "undefined", "<script");
    assertThat(browser.run("return window.savedAs")).isEqualTo("Bog-myrtle-extract-second-run.svg");
    browser.run("window.saved = []; document.querySelector('[data-save=png]').click();");
    browser.waitFor(
        "the pixels", () -> browser.run("return window.saved.length").toString().equals("1"));
    assertThat(browser.run("return window.saved[0].type")).isEqualTo("image/png");
  }
}
