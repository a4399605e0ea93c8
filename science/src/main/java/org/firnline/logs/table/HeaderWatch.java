package org.firnline.logs.table;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.firnline.logs.stamp.Stamp;
import org.firnline.logs.stamp.StampScan;
import org.firnline.logs.text.Cells;
import org.firnline.logs.text.NumberScan;

/**
 * Notices where another table begins below the first: a line of headings with figures under it. A
 * suspected heading waits for the lines that follow; if they do not bear it out, it gets the fate
 * it would have had.
 */
final class HeaderWatch {
  private static final int FEWEST_HEADINGS = 2;
  private static final int LONGEST_WAIT = 3;

  private final NumberScan numbers;
  private final StampScan stamps;
  private final Charset charset;
  private final Predicate<List<String>> isHeading;
  private final List<Runnable> fates = new ArrayList<>();
  private long suspect;
  private int waited;
  private boolean found;

  HeaderWatch(char decimalMark, Charset charset, Predicate<List<String>> isHeading) {
    this.numbers = new NumberScan(decimalMark);
    this.stamps = new StampScan(charset);
    this.charset = charset;
    this.isHeading = isHeading;
  }

  /** Whether a heading was suspected and is not settled yet. */
  boolean isWaiting() {
    return suspect > 0 && !found;
  }

  /**
   * Whether a line below a suspected heading bears it out; settles the suspicion if it waits long.
   */
  boolean confirms(Cells cells) {
    found = figures(cells) >= FEWEST_HEADINGS;
    waited++;
    if (!found && waited > LONGEST_WAIT) {
      settle();
    }
    return found;
  }

  /**
   * Whether a line can be a heading; then it waits, and {@code fate} runs if it is none.
   *
   * @param cells the line's cells
   * @param line its number, from 1
   * @param fate what becomes of it if it is no heading
   */
  boolean suspects(Cells cells, long line, Runnable fate) {
    if (figures(cells) > 0) {
      return false;
    }
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < cells.count(); i++) {
      if (!cells.isEmpty(i)) {
        texts.add(cells.text(i, charset));
      }
    }
    boolean below = isWaiting() && texts.size() >= FEWEST_HEADINGS;
    if (!below && (texts.size() < FEWEST_HEADINGS || !isHeading.test(texts))) {
      return false;
    }
    if (!isWaiting()) {
      suspect = line;
      waited = 0;
    }
    fates.add(fate);
    return true;
  }

  private int figures(Cells cells) {
    int figures = 0;
    for (int i = 0; i < cells.count(); i++) {
      if (!cells.isEmpty(i)) {
        boolean number = numbers.scan(cells.buffer(), cells.start(i), cells.end(i));
        boolean stamp =
            !number
                && stamps.scan(cells.buffer(), cells.start(i), cells.end(i)).kind()
                    != Stamp.Kind.NONE;
        figures += number || stamp ? 1 : 0;
      }
    }
    return figures;
  }

  /** Whether another table was found. */
  boolean sawTable() {
    return found;
  }

  /** Line of its heading; 0 if none was found. */
  long tableLine() {
    return found ? suspect : 0;
  }

  /** Gives lines that waited in vain their fate. */
  void settle() {
    if (!found) {
      fates.forEach(Runnable::run);
      suspect = 0;
    }
    fates.clear();
  }
}
