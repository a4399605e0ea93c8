package org.firnline.care;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A dryer over its runs.
 *
 * @param charts one for each figure with enough runs, in the order of {@link CareFigure}
 * @param causes where to look first, if figures changed for the worse
 */
public record DryerHealth(List<ControlChart> charts, List<LikelyCause> causes) {

  public DryerHealth {
    charts = List.copyOf(charts);
    causes = List.copyOf(causes);
  }

  /** What the figures of one dryer's runs say, in whatever order they come. */
  public static DryerHealth of(List<CarePoint> points) {
    List<ControlChart> charts = new ArrayList<>();
    Set<CareFigure> worse = EnumSet.noneOf(CareFigure.class);
    for (CareFigure figure : CareFigure.values()) {
      List<CarePoint> own =
          points.stream()
              .filter(point -> point.figure() == figure)
              .sorted(Comparator.comparing(CarePoint::at))
              .toList();
      Optional<ControlChart> chart = ControlChart.of(figure, own);
      chart.ifPresent(charts::add);
      if (chart.flatMap(ControlChart::change).map(ControlChart.Change::worse).orElse(false)) {
        worse.add(figure);
      }
    }
    return new DryerHealth(charts, LikelyCause.of(worse));
  }
}
