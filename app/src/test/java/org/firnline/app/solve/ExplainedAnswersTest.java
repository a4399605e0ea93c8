package org.firnline.app.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import org.firnline.evidence.Explanation;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whatever a case answers can be looked up with {@code firnline explain}. */
class ExplainedAnswersTest {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  /** Words of the answer itself, and keys that carry the set point they were asked for. */
  private static final String SELF_EXPLAINING =
      "reason|refused|found|warning|kind|id|pressure|shelf|rate|held_from_.*";

  @Test
  void everyKeyOfTheReferenceCasesIsExplained() throws IOException {
    String file;
    try (var stream = ExplainedAnswersTest.class.getResourceAsStream("/cases/cases.json")) {
      file = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
    JsonNode solved = JSON.readTree(CaseJson.write(CaseFile.parse("cases.json", file).solve()));
    Set<String> keys = new TreeSet<>();
    solved
        .path("cases")
        .valueStream()
        .forEach(one -> one.path("answer").properties().forEach(entry -> keys.add(entry.getKey())));
    assertThat(keys)
        .hasSizeGreaterThan(60)
        .filteredOn(key -> !key.matches(SELF_EXPLAINING))
        .allSatisfy(key -> assertThat(Explanation.find(key)).as(key).isPresent());
  }
}
