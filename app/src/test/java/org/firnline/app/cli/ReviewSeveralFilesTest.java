package org.firnline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code firnline review} with several files, packed files and choices. */
class ReviewSeveralFilesTest {
  @TempDir private Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int type(String... words) {
    CommandLine command = FirnlineCommand.commandLine();
    command.setOut(new PrintWriter(out));
    command.setErr(new PrintWriter(err));
    return command.execute(words);
  }

  private static String rows(int from, int to) {
    StringBuilder text = new StringBuilder("time,shelf_C,p_mbar\n");
    for (int i = from; i < to; i++) {
      text.append(String.format("2026-07-12 %02d:%02d:00,-40.0,0.081%n", 10 + i / 60, i % 60));
    }
    return text.toString().replace("\r", "");
  }

  private String written(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text);
    return file.toString();
  }

  private String packed(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    try (OutputStream packed = new GZIPOutputStream(Files.newOutputStream(file))) {
      packed.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return file.toString();
  }

  @Test
  void joinsThemAndFollowsWhatWasChosen() throws IOException {
    int exit =
        type(
            "review",
            written("a.csv", rows(0, 60)),
            packed("b.csv.gz", rows(50, 120)),
            "--choose",
            "zone=Europe/Berlin",
            "--json");
    assertThat(exit).isIn(FirnlineCommand.FINE, FirnlineCommand.STOP_LINE);
    JsonNode reading = JsonMapper.shared().readTree(out.toString()).get("reading");
    assertThat(reading.get("file").asString()).isEqualTo("a.csv and 1 more");
    assertThat(reading.get("rows").get("kept").asInt()).isEqualTo(120);
    assertThat(reading.get("start").get("utc").asString()).isEqualTo("2026-07-12T08:00:00Z");
    assertThat(reading.get("questions")).isEmpty();
    assertThat(reading.get("guesses").get(0).get("choice").asString()).isNotBlank();
  }

  @Test
  void refusesChoicesThatCannotBe() throws IOException {
    String file = written("a.csv", rows(0, 20));
    assertThat(type("review", file, "--choose", "zone=Atlantis"))
        .isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(err.toString()).contains("Atlantis");
  }

  @Test
  void saysWhichFileIsMissingAndWhichCannotBeRead() throws IOException {
    assertThat(type("review", folder.resolve("nowhere.csv").toString()))
        .isEqualTo(FirnlineCommand.BAD_INPUT);
    assertThat(err.toString()).contains("nowhere.csv");
    assertThat(type("review", written("words.txt", "nothing but words\n")))
        .isEqualTo(FirnlineCommand.BAD_INPUT);
  }
}
