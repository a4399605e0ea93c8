package org.firnline.app.run;

import org.firnline.units.Figures;
import org.firnline.units.Unit;

/** A part of the picture of a run with one scale, and the unit its quantities are shown in. */
enum PicturePane {
  TEMPERATURE("temperature", "°C", "linear", 1, 1.6),
  PRESSURE("pressure", "Pa", "log", -1, 1),
  WEIGHT("weight", "g", "linear", 1, 1),
  RATE("rate", "g/h", "linear", -1, 0.8),
  /** Channels whose quantity nobody has named. */
  UNNAMED("unnamed", "", "linear", -1, 1);

  private static final int SIGNIFICANT = 3;
  private static final int FINE_SIGNIFICANT = 6;
  private static final int MORE_DECIMALS = 2;
  private static final String THIN = "\u202f";

  private final String key;
  private final String symbol;
  private final Unit unit;
  private final String scale;
  private final int decimals;
  private final double weight;

  PicturePane(String key, String symbol, String scale, int decimals, double weight) {
    this.key = key;
    this.symbol = symbol;
    this.unit = Unit.parse(symbol.isEmpty() ? "1" : symbol);
    this.scale = scale;
    this.decimals = decimals;
    this.weight = weight;
  }

  String key() {
    return key;
  }

  /** The symbol of the unit in which this pane shows its quantities; empty where none is known. */
  String unit() {
    return symbol;
  }

  /** {@code linear} or {@code log}. */
  String scale() {
    return scale;
  }

  /** Decimals its values are shown with; −1 where significant digits are counted instead. */
  int decimals() {
    return decimals;
  }

  /** How high it is beside the others. */
  double weight() {
    return weight;
  }

  /** A value in the unit of this pane. */
  double fromSi(double si) {
    return unit.fromSi(si);
  }

  /** A value as people read it, with its unit. */
  String words(double si) {
    double value = fromSi(si);
    String figure =
        decimals >= 0 ? Figures.decimals(value, decimals) : Figures.significant(value, SIGNIFICANT);
    return symbol.isEmpty() ? figure : figure + THIN + symbol;
  }

  /** A value in this pane's unit, rounded to what a picture or a file can use. */
  double rounded(double si) {
    double value = fromSi(si);
    if (value == 0 || !Double.isFinite(value)) {
      return value;
    }
    int places =
        decimals >= 0
            ? decimals + MORE_DECIMALS
            : FINE_SIGNIFICANT - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
    double scale = Math.pow(10, places);
    return Math.rint(value * scale) / scale;
  }
}
