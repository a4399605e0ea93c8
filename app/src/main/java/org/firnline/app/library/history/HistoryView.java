package org.firnline.app.library.history;

import java.util.List;

/**
 * What predictions have been worth, every text ready to read.
 *
 * @param products one for each product
 */
record HistoryView(List<Product> products) {

  /**
   * One product.
   *
   * @param name what was dried
   * @param gain what learning has brought, in a sentence
   * @param trust running error and coverage, in a sentence
   * @param picture predicted against actual
   * @param rows run by run
   */
  record Product(String name, String gain, String trust, Picture picture, List<Row> rows) {}

  /**
   * The picture's coordinates, 640 wide and 180 high.
   *
   * @param bands one vertical stroke for each predicted band
   * @param actual one dot for each run
   * @param recipe how long the recipe held, as steps
   * @param ticks hours beside the picture
   */
  record Picture(String bands, String actual, String recipe, List<Tick> ticks) {}

  /** One mark of the scale. */
  record Tick(double y, String text) {}

  /** One run. */
  record Row(
      String run, String when, String predicted, String actual, String error, String coverage) {}
}
