package org.firnline.lab;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShelfPackingTest {

  private static final ShelfPacking.Pattern SQUARE = ShelfPacking.Pattern.SQUARE;
  private static final ShelfPacking.Pattern HEXAGONAL = ShelfPacking.Pattern.HEXAGONAL;

  @Nested
  class InASquarePattern {

    /**
     * n columns and m rows of two or more: 4 corners, 2(n + m) − 8 edges, (n − 2)(m − 2) inside.
     */
    @Property
    void meetsTheClosedForm(
        @ForAll @IntRange(min = 2, max = 60) int columns,
        @ForAll @IntRange(min = 2, max = 60) int rows,
        @ForAll @DoubleRange(min = 0, max = 0.99) double spare) {
      var packing =
          ShelfPacking.of(SQUARE, 0.022, (columns + spare) * 0.022, (rows + spare) * 0.022);
      assertThat(packing)
          .isEqualTo(
              new ShelfPacking(SQUARE, 4, 2 * (columns + rows) - 8, (columns - 2) * (rows - 2)));
    }

    @Test
    void hasTwoEndsInASingleRow() {
      assertThat(ShelfPacking.of(SQUARE, 1, 5, 1)).isEqualTo(new ShelfPacking(SQUARE, 2, 3, 0));
      assertThat(ShelfPacking.of(SQUARE, 1, 1, 1)).isEqualTo(new ShelfPacking(SQUARE, 1, 0, 0));
    }
  }

  @Nested
  class InAHexagonalPattern {

    /**
     * Counted by hand. 3 by 2.8: rows of 3, 2, 3, four corners, the middles of the outer rows and
     * both of the short row at the edge. 3.5 by 2.8: rows of 3, 3, 3 with one vessel inside. 4 by
     * 2.8: rows of 4, 3, 4 with one inside.
     */
    @ParameterizedTest
    @CsvSource({"3, 2.8, 4, 4, 0", "3.5, 2.8, 4, 4, 1", "4, 2.8, 4, 6, 1", "2, 1, 2, 0, 0"})
    void meetsHandCounts(double width, double depth, int corner, int edge, int center) {
      assertThat(ShelfPacking.of(HEXAGONAL, 1, width, depth))
          .isEqualTo(new ShelfPacking(HEXAGONAL, corner, edge, center));
    }

    /** The classical puzzle: 105 coins stand in rows where a chessboard order leaves 100. */
    @Test
    void holds105WhereSquaresHold100() {
      assertThat(ShelfPacking.of(HEXAGONAL, 1, 10, 10).total()).isEqualTo(105);
      assertThat(ShelfPacking.of(SQUARE, 1, 10, 10).total()).isEqualTo(100);
      assertThat(ShelfPacking.fullest(1, 10, 10).pattern()).isEqualTo(HEXAGONAL);
    }

    /** Area per vessel tends to d² √3/2, 15.5 % more vessels than in squares. */
    @Test
    void tendsToTheDensestPatternOfThePlane() {
      double perArea = ShelfPacking.of(HEXAGONAL, 1, 1000, 1000).total() / 1e6;
      assertThat(perArea).isBetween(1.150, 2 / Math.sqrt(3));
    }
  }

  @Test
  void isEmptyWhereTheVesselIsLargerThanTheShelf() {
    for (ShelfPacking.Pattern pattern : ShelfPacking.Pattern.values()) {
      assertThat(ShelfPacking.of(pattern, 0.3, 0.2, 1).total()).isZero();
      assertThat(ShelfPacking.of(pattern, 0.3, 0.2, 1).outerShare()).isZero();
    }
  }

  @Property
  void neverCoversMoreThanTheShelf(
      @ForAll @DoubleRange(min = 1, max = 40) double width,
      @ForAll @DoubleRange(min = 1, max = 40) double depth) {
    ShelfPacking packing = ShelfPacking.fullest(1, width, depth);
    assertThat(packing.total() * Math.PI / 4).isLessThanOrEqualTo(width * depth);
    assertThat(packing.outerShare()).isBetween(0.0, 1.0);
    assertThat(packing.corner() + packing.edge() + packing.center()).isEqualTo(packing.total());
  }
}
