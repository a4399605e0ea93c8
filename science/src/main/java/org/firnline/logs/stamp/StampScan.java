package org.firnline.logs.stamp;

import java.nio.charset.Charset;

/**
 * Takes a time cell apart: figures, separators and words. Knows no fixed list of formats; a clock
 * time is what stands around colons, a date what remains.
 */
public final class StampScan {
  private static final int MOST_FIGURES = 10;

  /** No place on Earth is farther from UTC. */
  private static final int FARTHEST_H = 15;

  private final Charset charset;
  private final StampWords words = new StampWords();
  private final Stamp stamp = new Stamp();

  private final long[] figure = new long[MOST_FIGURES];
  private final int[] digits = new int[MOST_FIGURES];
  private final byte[] before = new byte[MOST_FIGURES];
  private final byte[] after = new byte[MOST_FIGURES];
  private int figures;
  private boolean afternoon;
  private boolean unknownWord;

  /** A scanner for a file in a character set. */
  public StampScan(Charset charset) {
    this.charset = charset;
  }

  /** Reads one cell; the answer is reused by the next call. */
  public Stamp scan(byte[] b, int from, int to) {
    stamp.clear();
    figures = 0;
    afternoon = false;
    unknownWord = false;
    if (to - from < 3 || to - from > 48 || !collect(b, from, to) || unknownWord) {
      return stamp;
    }
    interpret();
    return stamp;
  }

  /** Reads one cell given as text. */
  public Stamp scan(String text) {
    byte[] bytes = text.getBytes(charset);
    return scan(bytes, 0, bytes.length);
  }

  private boolean collect(byte[] b, int from, int to) {
    int i = from;
    while (i < to) {
      byte c = b[i];
      if (c >= '0' && c <= '9') {
        if (figures == MOST_FIGURES) {
          return false;
        }
        int start = i;
        long value = 0;
        while (i < to && b[i] >= '0' && b[i] <= '9') {
          value = value * 10 + (b[i] - '0');
          i++;
        }
        if (i - start > 17) {
          return false;
        }
        figure[figures] = value;
        digits[figures] = i - start;
        before[figures] = start > from ? b[start - 1] : 0;
        after[figures] = i < to ? b[i] : 0;
        figures++;
      } else if (isLetter(c)) {
        int start = i;
        while (i < to && isLetter(b[i])) {
          i++;
        }
        // The two letters of ISO stamps stand in millions of cells: no text is made of them.
        if (i - start == 1 && (b[start] == 'T' || b[start] == 'Z')) {
          stamp.offset_min = b[start] == 'Z' ? 0 : stamp.offset_min;
        } else {
          word(new String(b, start, i - start, charset));
        }
      } else if (isSeparator(c)) {
        i++;
      } else {
        return false;
      }
    }
    return figures > 0;
  }

  private static boolean isLetter(byte c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c < 0;
  }

  private static boolean isSeparator(byte c) {
    return " -/.:,+'\t()_".indexOf(c) >= 0;
  }

  private void word(String written) {
    StampWords.Word word = words.read(written);
    switch (word.kind()) {
      case FILLER -> {
        // letters that only part figures
      }
      case MORNING -> stamp.twelveHour = true;
      case AFTERNOON -> {
        stamp.twelveHour = true;
        afternoon = true;
      }
      case MONTH -> stamp.month = word.number();
      case ZONE -> stamp.offset_min = word.number();
      case UNKNOWN -> unknownWord = true;
    }
  }

  private void interpret() {
    int hour = hourFigure();
    if (hour < 0) {
      interpretCompact();
      return;
    }
    int end = clock(hour);
    if (end < 0) {
      return;
    }
    int lead = hour;
    int trail = figures - end;
    if (lead == 0 && trail == 0) {
      stamp.kind = Stamp.Kind.TIME;
    } else if (lead == 1 && trail == 0 && stamp.month == 0 && digits[0] <= 4) {
      stamp.millis += figure[0] * 86_400_000L;
      stamp.kind = Stamp.Kind.TIME;
    } else if (lead == 1 && trail == 1 && stamp.month > 0 && digits[end] == 4) {
      takeDayAndYear(end);
    } else if (lead > 0 ? takeDate(0, lead) : takeDate(end, figures)) {
      stamp.kind = Stamp.Kind.DATE_TIME;
    }
  }

  /** "Wed Oct 14 08:00:00 2026": the clock stands between day and year. */
  private void takeDayAndYear(int year) {
    stamp.date[0] = (int) Math.min(figure[0], 99);
    stamp.dateDigits[0] = digits[0];
    stamp.date[1] = (int) figure[year];
    stamp.dateDigits[1] = digits[year];
    stamp.separator = ' ';
    stamp.kind = Stamp.Kind.DATE_TIME;
  }

  private int hourFigure() {
    for (int i = 0; i + 1 < figures; i++) {
      boolean colon = after[i] == ':' && before[i + 1] == ':';
      boolean french = (after[i] == 'h' || after[i] == 'H') && before[i + 1] == after[i];
      if (colon || french) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Reads hours, minutes, seconds, fraction and offset; the first figure behind them, -1 if bad.
   */
  private int clock(int hour) {
    long h = figure[hour];
    long min = figure[hour + 1];
    int next = hour + 2;
    long s = 0;
    double fraction = 0;
    if (next < figures && before[next] == ':') {
      s = figure[next];
      stamp.secondsWritten = true;
      next++;
      if (next < figures
          && (before[next] == '.' || before[next] == ',' || before[next] == ':')
          && after[next - 1] == before[next]) {
        fraction = figure[next] / Math.pow(10, digits[next]);
        stamp.fractionWritten = true;
        next++;
      }
    }
    if (min > 59 || s > 60 || (stamp.twelveHour && (h < 1 || h > 12))) {
      return -1;
    }
    if (stamp.twelveHour) {
      h = h % 12 + (afternoon ? 12 : 0);
    }
    stamp.millis = ((h * 60 + min) * 60 + s) * 1000 + Math.round(fraction * 1000);
    return offset(next);
  }

  private int offset(int next) {
    boolean signed = next < figures && (before[next] == '+' || before[next] == '-');
    if (!signed || hasDateSign(next)) {
      return next;
    }
    int sign = before[next] == '-' ? -1 : 1;
    boolean joined = digits[next] == 4;
    boolean parted = !joined && next + 1 < figures && before[next + 1] == ':';
    long hours = joined ? figure[next] / 100 : figure[next];
    long minutes = joined ? figure[next] % 100 : parted ? figure[next + 1] : 0;
    if (hours > FARTHEST_H || minutes > 59) {
      return -1;
    }
    stamp.offset_min = sign * (int) (hours * 60 + minutes);
    return next + (parted ? 2 : 1);
  }

  /** A hyphen behind the clock followed by another hyphen opens a date, not an offset. */
  private boolean hasDateSign(int next) {
    return before[next] == '-' && next + 1 < figures && before[next + 1] == '-';
  }

  private boolean takeDate(int from, int to) {
    int count = to - from;
    if (count == 1 && digits[from] == 8) {
      compactDate(figure[from]);
      return true;
    }
    if (stamp.month > 0 ? count != 2 : count != 3) {
      return false;
    }
    stamp.separator = (char) before[from + 1];
    for (int i = 0; i < count; i++) {
      if (digits[from + i] > 4) {
        return false;
      }
      stamp.date[i] = (int) figure[from + i];
      stamp.dateDigits[i] = digits[from + i];
    }
    return true;
  }

  private void compactDate(long yyyymmdd) {
    stamp.date[0] = (int) (yyyymmdd / 10_000);
    stamp.date[1] = (int) (yyyymmdd / 100 % 100);
    stamp.date[2] = (int) (yyyymmdd % 100);
    stamp.dateDigits[0] = 4;
    stamp.dateDigits[1] = 2;
    stamp.dateDigits[2] = 2;
  }

  /** No colon anywhere: a date alone, or figures run together as 20261012T100000. */
  private void interpretCompact() {
    boolean plausible = isCompactDate(0);
    if (figures == 1 && digits[0] == 14 && isCompactDate(0)) {
      compactDate(figure[0] / 1_000_000);
      compactClock(figure[0] % 1_000_000, 6);
      stamp.kind = Stamp.Kind.DATE_TIME;
    } else if (figures == 2 && plausible && digits[0] == 8 && isCompactClock(1)) {
      compactDate(figure[0]);
      compactClock(figure[1], digits[1]);
      stamp.kind = Stamp.Kind.DATE_TIME;
    } else if (figures == 1 && digits[0] == 8 && plausible) {
      compactDate(figure[0]);
      stamp.kind = Stamp.Kind.DATE;
    } else if (isWrittenDate() && takeDate(0, figures)) {
      stamp.kind = Stamp.Kind.DATE;
    }
  }

  private boolean isWrittenDate() {
    if (stamp.month > 0) {
      return figures == 2;
    }
    return figures == 3
        && before[1] == before[2]
        && (before[1] == '.' || before[1] == '/' || before[1] == '-')
        && before[0] != '-'
        && before[0] != '+';
  }

  private boolean isCompactClock(int at) {
    return (digits[at] == 6 || digits[at] == 4) && "T -_".indexOf(before[at]) >= 0;
  }

  private boolean isCompactDate(int at) {
    long date = digits[at] == 14 ? figure[at] / 1_000_000 : figure[at];
    long year = date / 10_000;
    long month = date / 100 % 100;
    long day = date % 100;
    return year > 1990 && year < 2100 && month >= 1 && month <= 12 && day >= 1 && day <= 31;
  }

  private void compactClock(long clock, int length) {
    long hhmmss = length == 4 ? clock * 100 : clock;
    stamp.millis = ((hhmmss / 10_000 * 60 + hhmmss / 100 % 100) * 60 + hhmmss % 100) * 1000;
    stamp.secondsWritten = length == 6;
  }
}
