package org.firnline.logs.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.firnline.logs.channel.Quality;
import org.firnline.logs.channel.Series;
import org.firnline.logs.channel.SeriesBuilder;
import org.firnline.logs.text.LooseCell;

/** One column while the body is read: its numbers, and its texts if it has any. */
public final class ColumnBuilder {
  private static final int MOST_TEXTS = 20_000;
  private static final String OVERFLOW = "(further texts not kept apart)";

  private final SeriesBuilder numbers = new SeriesBuilder();
  private final SeriesBuilder texts = new SeriesBuilder();
  private final Map<String, Integer> codes = new HashMap<>();
  private final List<String> labels = new ArrayList<>();
  private String unit = "";
  private long numberCount;
  private long textCount;

  void addNumber(long mantissa, int decimals) {
    numbers.append(mantissa, decimals, Quality.GOOD);
    numberCount++;
  }

  void addMissing() {
    numbers.appendWithoutNumber(Quality.MISSING);
  }

  void addLoose(LooseCell cell, String written) {
    switch (cell.kind()) {
      case NUMBER -> {
        numbers.append(cell.number(), Quality.GOOD);
        numberCount++;
        if (unit.isEmpty()) {
          unit = cell.unit();
        }
      }
      case WORD -> {
        addText(written);
        if (Double.isNaN(cell.number())) {
          numbers.appendWithoutNumber(cell.quality());
        } else {
          numbers.append(cell.number(), cell.quality());
        }
      }
      case TEXT -> {
        addText(written);
        textCount++;
        numbers.appendWithoutNumber(Quality.UNREADABLE);
      }
    }
  }

  private void addText(String written) {
    while (texts.size() < numbers.size()) {
      texts.appendWithoutNumber(Quality.MISSING);
    }
    texts.append(code(written), 0, Quality.GOOD);
  }

  private int code(String written) {
    Integer known = codes.get(written);
    if (known != null) {
      return known;
    }
    String label = labels.size() < MOST_TEXTS ? written : OVERFLOW;
    return codes.computeIfAbsent(
        label,
        text -> {
          labels.add(text);
          return labels.size() - 1;
        });
  }

  /** Whether the column is one of words: it holds text, or words and no number at all. */
  public boolean isText() {
    return textCount > numberCount || (numberCount == 0 && !labels.isEmpty());
  }

  /** Whether the column holds nothing at all. */
  public boolean isEmpty() {
    return numberCount == 0 && labels.isEmpty();
  }

  /** A unit written behind the numbers, empty if none. */
  public String unit() {
    return unit;
  }

  /** The numbers, SI = written × scale + offset. */
  public Series numbers(double scale, double offset) {
    return numbers.build(scale, offset);
  }

  /** The texts as positions in {@link #labels}. */
  public Series texts() {
    while (texts.size() < numbers.size()) {
      texts.appendWithoutNumber(Quality.MISSING);
    }
    return texts.build(1, 0);
  }

  /** The distinct texts in order of first appearance. */
  public List<String> labels() {
    return List.copyOf(labels);
  }
}
