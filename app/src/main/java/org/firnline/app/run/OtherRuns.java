package org.firnline.app.run;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.firnline.app.reading.ReviewedRun;
import org.firnline.app.reading.ReviewedRuns;
import org.firnline.app.store.KeptRuns;
import org.firnline.app.words.Shown;
import org.firnline.logs.Log;
import org.firnline.review.Phase;
import org.firnline.review.Review;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Lays a second run over the first, brought together where a phase begins. */
@Component
class OtherRuns {
  private static final double NOTICEABLE_S = 60;

  private final ReviewedRuns reviewed;
  private final KeptRuns runs;
  private final MessageSource words;

  OtherRuns(ReviewedRuns reviewed, KeptRuns runs, MessageSource words) {
    this.reviewed = reviewed;
    this.runs = runs;
    this.words = words;
  }

  /** A run that can be chosen. */
  record Choice(long id, String title) {}

  /** The runs that can be laid over one. */
  List<Choice> choices(long id) {
    return runs.list().stream()
        .filter(run -> run.id() != id && run.logFileId().isPresent())
        .map(run -> new Choice(run.id(), run.title()))
        .toList();
  }

  /** The phase with this name; empty for the start of the log. */
  static Optional<Phase.Name> phase(String label) {
    return Arrays.stream(Phase.Name.values()).filter(n -> n.label().equals(label)).findFirst();
  }

  /**
   * The other run, if there is one with this number that can be read.
   *
   * @param at the phase whose begins are brought together; empty for the starts of both logs
   */
  Optional<OtherRun> find(ReviewedRun first, long id, Optional<Phase.Name> at, Locale locale) {
    Optional<ReviewedRun> second = id == first.run().id() ? Optional.empty() : reviewed.find(id);
    return second
        .filter(run -> run.log().isPresent() && run.review().isPresent())
        .map(run -> lay(first, run, at, locale));
  }

  private OtherRun lay(
      ReviewedRun first, ReviewedRun second, Optional<Phase.Name> at, Locale locale) {
    Optional<Double> here = at.flatMap(name -> begin_s(first, name));
    Optional<Double> there = at.flatMap(name -> begin_s(second, name));
    boolean both = here.isPresent() && there.isPresent();
    String aligned =
        both
            ? say("run.other.aligned-phase", locale, at.orElseThrow().label())
            : say(at.isEmpty() ? "run.other.aligned" : "run.other.no-phase", locale);
    return new OtherRun(
        second.run().id(),
        second.run().title(),
        second.log().orElseThrow(),
        both ? here.get() - there.get() : 0,
        "/runs/" + second.run().id() + "/series",
        say("run.other.suffix", locale),
        aligned,
        differences(first.review().orElseThrow(), second.review().orElseThrow(), locale));
  }

  private static Optional<Double> begin_s(ReviewedRun run, Phase.Name name) {
    Instant start = run.log().flatMap(Log::start).orElse(Instant.EPOCH);
    return run.review()
        .flatMap(review -> find(review, name))
        .map(phase -> RunPicture.seconds(start, phase.start()));
  }

  private static Optional<Phase> find(Review review, Phase.Name name) {
    return review.phases().stream().filter(phase -> phase.name() == name).findFirst();
  }

  private List<String> differences(Review first, Review second, Locale locale) {
    List<String> sentences = new ArrayList<>();
    for (Phase.Name name : Phase.Name.values()) {
      Optional<Phase> here = find(first, name);
      Optional<Phase> there = find(second, name);
      if (here.isPresent() && there.isPresent()) {
        sentences.add(difference(name, here.get().duration_s(), there.get().duration_s(), locale));
      } else if (here.isPresent() || there.isPresent()) {
        String key = here.isPresent() ? "run.other.only-here" : "run.other.only-there";
        sentences.add(say(key, locale, name.label()));
      }
    }
    return sentences;
  }

  private String difference(Phase.Name name, double here_s, double there_s, Locale locale) {
    String here = Shown.duration(here_s);
    String there = Shown.duration(there_s);
    double more_s = here_s - there_s;
    if (Math.abs(more_s) < NOTICEABLE_S) {
      return say("run.other.same", locale, name.label(), here);
    }
    String key = more_s > 0 ? "run.other.longer" : "run.other.shorter";
    return say(key, locale, name.label(), Shown.duration(Math.abs(more_s)), here, there);
  }

  private String say(String key, Locale locale, Object... with) {
    return words.getMessage(key, with, locale);
  }
}
