package org.firnline.logs.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.firnline.logs.text.Cells;

/**
 * Makes one heading per column out of the header rows: joins rows, fills merged cells, takes units
 * out.
 */
public final class HeadingReader {
  private static final Pattern BRACKETED =
      Pattern.compile("(.*?)\\s*([\\[({][^\\])}]*[\\])}])\\s*(.*)");
  private static final Pattern SCALED_TAIL =
      Pattern.compile("(.*?[^x])x(\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d+)?|10\\^?-\\d+)(\\D.*)?");
  private static final Pattern SCALING = Pattern.compile("[x×*]\\s*\\d|0[.,]\\d|10\\^?-|1[eE]-");
  private static final Pattern SLASHED = Pattern.compile("(.*\\S)\\s*[/,]\\s*(\\S+)");

  private final UnitSpellings units;

  /** A reader that knows units by these spellings. */
  public HeadingReader(UnitSpellings units) {
    this.units = units;
  }

  /** One heading per column of a table. */
  public List<ColumnHeading> read(TableShape shape) {
    Cells cells = new Cells(shape.dialect().delimiter());
    List<List<String>> rows = new ArrayList<>();
    for (SampleLine line : shape.headerLines()) {
      line.splitWith(cells);
      List<String> row = new ArrayList<>();
      for (int i = 0; i < shape.columns(); i++) {
        row.add(cells.text(i, line.charset()).replace("\uFEFF", ""));
      }
      rows.add(row);
    }
    List<String> unitRow = shape.unitLine() ? rows.remove(rows.size() - 1) : List.of();
    fillMergedCells(rows);
    List<ColumnHeading> headings = new ArrayList<>();
    for (int i = 0; i < shape.columns(); i++) {
      String header = joined(rows, i);
      ColumnHeading heading = heading(header);
      if (!unitRow.isEmpty()) {
        Optional<ColumnUnit> unit = units.find(unitRow.get(i));
        heading = unit.isPresent() ? heading.withUnit(unit.get()) : heading;
      }
      headings.add(heading);
    }
    return numbered(withoutLetteredNames(headings));
  }

  /** Columns of the same name get a number, so that each can be spoken of. */
  private static List<ColumnHeading> numbered(List<ColumnHeading> headings) {
    List<ColumnHeading> all = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    for (ColumnHeading heading : headings) {
      int count = seen.merge(heading.name(), 1, Integer::sum);
      String behind = " (" + count + ")";
      all.add(
          count == 1 || heading.name().isEmpty()
              ? heading
              : new ColumnHeading(
                  heading.header() + behind,
                  heading.name() + behind,
                  heading.description(),
                  heading.unit(),
                  heading.scale()));
    }
    return all;
  }

  /** "Product C" beside "Product A" is a name: its last letter is no unit. */
  private static List<ColumnHeading> withoutLetteredNames(List<ColumnHeading> headings) {
    List<ColumnHeading> checked = new ArrayList<>();
    for (ColumnHeading heading : headings) {
      String stem = heading.name() + " ";
      boolean lettered =
          heading.unit().isPresent()
              && heading.header().length() == stem.length() + 1
              && heading.header().startsWith(stem)
              && headings.stream().anyMatch(other -> isLettered(other, stem));
      checked.add(
          lettered
              ? new ColumnHeading(heading.header(), heading.header(), "", Optional.empty(), 1)
              : heading);
    }
    return checked;
  }

  private static boolean isLettered(ColumnHeading other, String stem) {
    String header = other.header();
    return other.unit().isEmpty()
        && header.length() == stem.length() + 1
        && header.startsWith(stem)
        && Character.isLetter(header.charAt(header.length() - 1));
  }

  /** A blank cell in an upper row belongs to the named cell on its left, as in merged cells. */
  private static void fillMergedCells(List<List<String>> rows) {
    for (int r = 0; r + 1 < rows.size(); r++) {
      List<String> row = rows.get(r);
      List<String> below = rows.get(r + 1);
      for (int i = 1; i < row.size(); i++) {
        if (row.get(i).isEmpty() && !below.get(i).isEmpty()) {
          row.set(i, row.get(i - 1));
        }
      }
    }
  }

  private static String joined(List<List<String>> rows, int column) {
    StringBuilder name = new StringBuilder();
    String last = "";
    for (List<String> row : rows) {
      String part = row.get(column);
      if (!part.isEmpty() && !part.equals(last)) {
        name.append(name.isEmpty() ? "" : " ").append(part);
      }
      last = part;
    }
    return name.toString();
  }

  /** Takes the unit out of a heading. */
  public ColumnHeading heading(String header) {
    Matcher bracketed = BRACKETED.matcher(header);
    if (bracketed.matches()) {
      Optional<ColumnUnit> unit = units.find(bracketed.group(2));
      if (unit.isPresent()) {
        String name = (bracketed.group(1) + " " + bracketed.group(3)).strip();
        return new ColumnHeading(header, name, "", unit, 1);
      }
    }
    Matcher slashed = SLASHED.matcher(header);
    if (slashed.matches() && units.find(slashed.group(2)).isPresent()) {
      return new ColumnHeading(header, slashed.group(1), "", units.find(slashed.group(2)), 1);
    }
    for (int words = 2; words >= 1; words--) {
      int cut = tailStart(header, words);
      Optional<ColumnUnit> unit = cut > 0 ? unitBehind(header.substring(cut)) : Optional.empty();
      if (unit.isPresent()) {
        String name = header.substring(0, cut).strip().replaceFirst("\\s+in$", "");
        return new ColumnHeading(header, name, "", unit, 1);
      }
    }
    return suffixed(header);
  }

  /** A unit, scaled only if it is written as a scaling: "x10-3 mbar", not the "1 °C" of a name. */
  private Optional<ColumnUnit> unitBehind(String tail) {
    return SCALING.matcher(tail).lookingAt() ? units.find(tail) : units.findPlain(tail);
  }

  private static int tailStart(String header, int words) {
    int cut = header.length();
    for (int i = 0; i < words && cut > 0; i++) {
      cut = header.lastIndexOf(' ', cut - 1);
    }
    return cut <= 0 ? -1 : cut + 1;
  }

  private ColumnHeading suffixed(String header) {
    Matcher scaled = SCALED_TAIL.matcher(header);
    if (scaled.matches() && !scaled.group(2).matches("0+(\\.0+)?([eE].*)?")) {
      String factor = scaled.group(2).replaceFirst("^10\\^?-", "1E-");
      double scale = UnitSpellings.asScale(Double.parseDouble(factor));
      Optional<ColumnUnit> unit =
          scaled.group(3) == null
              ? Optional.empty()
              : units
                  .find(scaled.group(3))
                  .map(found -> new ColumnUnit(found.spelling(), found.unit(), scale));
      return new ColumnHeading(
          header, scaled.group(1).strip(), "", unit, unit.isPresent() ? 1 : scale);
    }
    int underscore = Math.max(header.lastIndexOf('_'), header.lastIndexOf('.'));
    if (underscore > 0 && underscore + 1 < header.length()) {
      Optional<ColumnUnit> unit = units.find(header.substring(underscore + 1));
      if (unit.isPresent()) {
        return new ColumnHeading(header, header, "", unit, 1);
      }
    }
    return new ColumnHeading(header, header, "", Optional.empty(), 1);
  }
}
