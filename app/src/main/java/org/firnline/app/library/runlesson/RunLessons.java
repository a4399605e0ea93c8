package org.firnline.app.library.runlesson;

import java.util.List;
import org.firnline.app.planfile.PlanInput;
import org.firnline.learning.run.LearningRefusal;
import org.firnline.learning.run.ProbedVessel;
import org.firnline.learning.run.ProbedVessels;
import org.firnline.learning.run.RunFit;
import org.firnline.learning.run.RunLesson;
import org.firnline.learning.run.RunPriors;
import org.firnline.logs.Log;
import org.firnline.review.Finding;
import org.firnline.review.Review;

/**
 * What the probed vessels of one run teach, or why nothing is learned from it.
 *
 * @param lessons one for each product thermometer that left the ice; empty if refused
 * @param refusals findings that forbid learning
 */
public record RunLessons(List<RunLesson> lessons, List<Finding> refusals) {

  public RunLessons {
    lessons = List.copyOf(lessons);
    refusals = List.copyOf(refusals);
  }

  /** Learns from a reviewed run with the plan's values as beliefs before it. */
  public static RunLessons of(Log log, Review review, PlanInput plan) {
    List<Finding> refusals = LearningRefusal.of(review);
    if (!refusals.isEmpty()) {
      return new RunLessons(List.of(), refusals);
    }
    List<ProbedVessel> vessels = ProbedVessels.in(log, review, plan.load());
    RunPriors priors = RunPriors.of(plan.load());
    return new RunLessons(
        vessels.stream().map(vessel -> RunFit.learn(vessel, priors)).toList(), List.of());
  }

  /** Whether anything was learned. */
  public boolean taught() {
    return !lessons.isEmpty();
  }
}
