package org.firnline.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Rules that only the text of the main code can show, in all modules. */
class SourcesTest {
  private static final Pattern ZERO_CELSIUS = Pattern.compile("(?<![\\d.])273\\.150*(?!\\d)");
  private static final int LARGEST_TYPE = 300;

  @Test
  void the_zero_of_the_Celsius_scale_is_written_once() {
    assertThat(Repository.mainSources())
        .as(
            "files with 273.15 in their code: every further copy is a chance to write 273.5; use"
                + " org.firnline.units")
        .filteredOn(source -> ZERO_CELSIUS.matcher(Repository.codeOf(source)).find())
        .hasSizeLessThanOrEqualTo(1)
        .allSatisfy(
            source ->
                assertThat(ZERO_CELSIUS.matcher(Repository.codeOf(source)).results())
                    .as("places in " + source)
                    .hasSize(1));
  }

  @Test
  void no_file_is_longer_than_a_reader_can_hold() {
    assertThat(Repository.mainSources())
        .as("files with more than " + LARGEST_TYPE + " lines of code: two ideas in one file")
        .filteredOn(source -> linesOfCode(source) > LARGEST_TYPE)
        .isEmpty();
  }

  private static long linesOfCode(Path source) {
    return Repository.codeOf(source).lines().filter(line -> !line.isBlank()).count();
  }
}
