package org.firnline.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.firnline.planning.CheckLine;
import org.firnline.planning.Unknown;
import org.firnline.planning.Verdict;
import org.junit.jupiter.api.Test;

/** No page and no command is ever short of words, and no words lie unused. */
class BundleTest {
  private static final Path MAIN = Path.of("src", "main");
  private static final Pattern IN_TEMPLATE = Pattern.compile("#\\{([a-z][A-Za-z0-9._-]*)[}(]");
  private static final Pattern IN_CODE =
      Pattern.compile(
          "(?:say|getMessage|fact|label|row|phase|limit)\\(\\s*(?:[a-z]+,"
              + " )?\"([a-z][a-z0-9-]*\\.[A-Za-z0-9._-]*[a-z0-9])\"");

  /** Keys that the code puts together; other tests hold most of them. */
  private static final List<String> MADE_OF_PARTS =
      List.of(
          "ask.",
          "design.kind.",
          "design.phase.",
          "hazard.",
          "check.",
          "account.refused.",
          "audit.action.",
          "role.",
          "scope.",
          "unknown.",
          "state.",
          "picture.",
          "plan.picture.",
          "plan.line.",
          "plan.group.",
          "plan.field.",
          "plan.origin.",
          "plan.placeholder.",
          "run.account.",
          "run.summary.",
          "run.planned.",
          "lesson.parameter.",
          "lesson.unit.",
          "care.figure.",
          "care.cause.",
          "care.due.",
          "icerun.input.",
          "icerun.law.",
          "icerun.line.",
          "icerun.example.");

  private final Words words = Words.in(Locale.ENGLISH);

  private static List<Path> files(Path folder, String ending) {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(ending)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> keys(Path folder, String ending, Pattern pattern) {
    Set<String> keys = new TreeSet<>();
    for (Path file : files(folder, ending)) {
      pattern.matcher(read(file)).results().forEach(found -> keys.add(found.group(1)));
    }
    return keys;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void everyKeyInATemplateHasItsText() {
    Set<String> keys = keys(MAIN.resolve("resources/templates"), ".html", IN_TEMPLATE);
    assertThat(keys).hasSizeGreaterThan(80).allMatch(words::has);
  }

  @Test
  void everyKeyInTheCodeHasItsText() {
    Set<String> keys = keys(MAIN.resolve("java"), ".java", IN_CODE);
    assertThat(keys).hasSizeGreaterThan(40).allMatch(words::has);
  }

  @Test
  void everyCheckHasWordsForEveryVerdict() {
    List<String> missing = new ArrayList<>();
    for (CheckLine.Subject subject : CheckLine.Subject.values()) {
      missing.add("check." + key(subject) + ".name");
      for (Verdict verdict : Verdict.values()) {
        missing.add("check." + key(subject) + "." + key(verdict));
      }
    }
    for (Unknown unknown : Unknown.values()) {
      missing.add("unknown." + key(unknown) + ".name");
      missing.add("unknown." + key(unknown) + ".measure");
    }
    missing.removeIf(words::has);
    assertThat(missing).isEmpty();
  }

  @Test
  void noTextLiesUnused() {
    StringBuilder everything = new StringBuilder();
    files(MAIN.resolve("resources/templates"), ".html").forEach(f -> everything.append(read(f)));
    files(MAIN.resolve("java"), ".java").forEach(f -> everything.append(read(f)));
    List<String> unused = new ArrayList<>(keysOfBundle());
    unused.removeIf(key -> MADE_OF_PARTS.stream().anyMatch(key::startsWith));
    unused.removeIf(key -> everything.indexOf(key) >= 0);
    assertThat(unused).isEmpty();
  }

  private static List<String> keysOfBundle() {
    return read(MAIN.resolve("resources/messages.properties"))
        .lines()
        .filter(line -> line.contains("="))
        .map(line -> line.substring(0, line.indexOf('=')))
        .toList();
  }

  @Test
  void everyTextCanBeFilledIn() {
    Object[] numbers = {1, 2, 3, 4, 5, 6};
    for (String key : keysOfBundle()) {
      assertThat(words.say(key, numbers)).as(key).isNotBlank().doesNotContain("{", "}");
    }
  }

  @Test
  void noTemplateCarriesScriptStyleOrTextOfItsOwn() {
    for (Path template : files(MAIN.resolve("resources/templates"), ".html")) {
      String text = read(template);
      assertThat(text).as(template.toString()).doesNotContain("<style", " style=", "javascript:");
      assertThat(Pattern.compile("\\son[a-z]+=").matcher(text).find())
          .as(template.toString())
          .isFalse();
      assertThat(Pattern.compile("<script(?![^>]*src=)").matcher(text).find())
          .as(template.toString())
          .isFalse();
    }
  }

  private static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
