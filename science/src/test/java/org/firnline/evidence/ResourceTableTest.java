package org.firnline.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import org.junit.jupiter.api.Test;

class ResourceTableTest {

  private final List<ResourceTable.Row> rows =
      ResourceTable.read(ResourceTableTest.class, "table.csv");

  @Test
  void readsCommasAndQuotesInsideQuotes() {
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0).text("name")).isEqualTo("1,4-dioxane, called \"dioxane\"");
    assertThat(rows.get(0).number("value")).isEqualTo(12.5);
    assertThat(rows.get(1).text("name")).isEqualTo("plain");
  }

  @Test
  void readsOrigins() {
    assertThat(rows.get(0).source())
        .isEqualTo(new Source("a book, page 3", Source.Status.FROM_MEMORY));
    assertThat(rows.get(1).source()).isEqualTo(new Source("a paper", Source.Status.FOUND));
  }

  @Test
  void refusesWhatIsNotThere() {
    assertThatIllegalArgumentException().isThrownBy(() -> rows.get(0).text("color"));
    assertThatIllegalStateException()
        .isThrownBy(() -> ResourceTable.read(ResourceTableTest.class, "missing.csv"));
    assertThatIllegalStateException()
        .isThrownBy(() -> ResourceTable.read(ResourceTableTest.class, "short-row.csv"));
  }
}
