package org.firnline.app.ask;

import java.util.List;

/** One of the questions: what it asks for and how it is answered. */
public interface AskTopic {

  /** Its word behind {@code firnline ask} and in the address of its page. */
  String key();

  /** What it asks for, in order. */
  List<AskInput> inputs();

  /**
   * The answer.
   *
   * @throws org.firnline.evidence.InvalidInputException if the values do not go together
   */
  AskAnswer answer(AskValues values);
}
