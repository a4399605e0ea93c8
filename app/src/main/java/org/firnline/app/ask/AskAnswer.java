package org.firnline.app.ask;

import java.util.List;
import org.firnline.planning.Verdict;

/**
 * What a question is answered with.
 *
 * @param verdict whether the answer is good news
 * @param figures the numbers, the most wanted first
 * @param advice bundle key of the one sentence that says what to do, without the topic
 * @param places what fills the places of that sentence
 * @param picture the one picture
 */
public record AskAnswer(
    Verdict verdict,
    List<AskFigure> figures,
    String advice,
    List<String> places,
    AskPicture picture) {

  public AskAnswer {
    figures = List.copyOf(figures);
    places = List.copyOf(places);
  }
}
