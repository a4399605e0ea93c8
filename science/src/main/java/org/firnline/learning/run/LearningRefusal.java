package org.firnline.learning.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.firnline.review.Finding;
import org.firnline.review.FindingKind;
import org.firnline.review.Phase;
import org.firnline.review.Review;

/**
 * Why nothing may be learned from a run: something happened during primary drying that the model
 * knows nothing of, or an instrument was not to be trusted. Values fitted to such a run would be
 * wrong with small uncertainty.
 */
public final class LearningRefusal {

  /** The vapor or the ice went a way that the model does not have. */
  private static final Set<FindingKind> ALWAYS =
      EnumSet.of(
          FindingKind.PRODUCT_TOO_WARM,
          FindingKind.VACUUM_LEAK,
          FindingKind.VACUUM_LOST,
          FindingKind.PORT_OPENED,
          FindingKind.POWER_CUT,
          FindingKind.CLOCK_CHANGED,
          FindingKind.SENSOR_DRIFT);

  private static final double LONG_GAP_S = 3600;

  private LearningRefusal() {}

  /** The findings that forbid learning; empty if there is none. */
  public static List<Finding> of(Review review) {
    List<Finding> forbidding = new ArrayList<>();
    for (Finding finding : review.findings()) {
      if (forbids(finding) && isInPrimaryDrying(finding, review)) {
        forbidding.add(finding);
      }
    }
    return forbidding;
  }

  private static boolean forbids(Finding finding) {
    if (ALWAYS.contains(finding.kind())) {
      return true;
    }
    double length = finding.end().getEpochSecond() - finding.start().getEpochSecond();
    return finding.kind() == FindingKind.GAP && length > LONG_GAP_S;
  }

  private static boolean isInPrimaryDrying(Finding finding, Review review) {
    return review.phases().stream()
        .filter(phase -> phase.name() == Phase.Name.PRIMARY_DRYING)
        .anyMatch(
            phase ->
                finding.start().isBefore(phase.end()) && !finding.end().isBefore(phase.start()));
  }
}
