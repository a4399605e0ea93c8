package org.firnline.logs.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Which cell styles of a workbook show a number as a date or a time. */
final class CellStyles {
  /** How a number is shown. */
  enum Show {
    NUMBER,
    DATE,
    DATE_TIME,
    CLOCK,
    /** Hours that go on counting beyond a day. */
    ELAPSED
  }

  private final List<Show> styles;

  private CellStyles(List<Show> styles) {
    this.styles = styles;
  }

  static CellStyles none() {
    return new CellStyles(List.of());
  }

  /** Reads the styles of a workbook. */
  static CellStyles read(InputStream in) throws IOException {
    Map<Integer, Show> formats = new HashMap<>();
    List<Show> styles = new ArrayList<>();
    boolean inside = false;
    try (PlainXml xml = new PlainXml(in)) {
      while (xml.advance()) {
        if (xml.starts("numFmt")) {
          formats.put(xml.number("numFmtId", -1), byCode(xml.attribute("formatCode").orElse("")));
        } else if (xml.starts("cellXfs")) {
          inside = true;
        } else if (xml.ends("cellXfs")) {
          inside = false;
        } else if (inside && xml.starts("xf")) {
          int format = xml.number("numFmtId", 0);
          styles.add(formats.getOrDefault(format, builtIn(format)));
        }
      }
    }
    return new CellStyles(styles);
  }

  /** Formats that every workbook knows without declaring them: ECMA-376 part 1, 18.8.30. */
  private static Show builtIn(int format) {
    return switch (format) {
      case 14, 15, 16, 17 -> Show.DATE;
      case 18, 19, 20, 21, 45, 47 -> Show.CLOCK;
      case 22 -> Show.DATE_TIME;
      case 46 -> Show.ELAPSED;
      default -> Show.NUMBER;
    };
  }

  /** What a format code shows: letters for days and hours, quoted words and colors left out. */
  static Show byCode(String code) {
    String plain =
        code.toLowerCase(Locale.ROOT)
            .replaceAll("\"[^\"]*\"", "")
            .replaceAll("\\\\.", "")
            .replaceAll("general|red|green|blue|black|white|yellow|cyan|magenta", "");
    if (plain.matches("(?s).*\\[(h+|m+|s+)\\].*")) {
      return Show.ELAPSED;
    }
    String bare = plain.replaceAll("\\[[^\\]]*\\]", "").split(";", 2)[0];
    boolean clock = bare.contains("h") || bare.contains("s");
    boolean day = bare.contains("d") || bare.contains("y");
    if (day) {
      return clock ? Show.DATE_TIME : Show.DATE;
    }
    return clock ? Show.CLOCK : Show.NUMBER;
  }

  /** How the cells of a style are shown. */
  Show of(int style) {
    return style >= 0 && style < styles.size() ? styles.get(style) : Show.NUMBER;
  }
}
