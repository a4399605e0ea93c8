package org.firnline.app.ask;

import org.firnline.app.words.Words;

/** A picture that can be drawn in any language. */
@FunctionalInterface
public interface AskPicture {

  /** The picture as SVG markup; every text in it is escaped. */
  String svg(Words words);
}
