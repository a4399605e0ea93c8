package org.firnline.planning;

import java.util.List;
import java.util.Map;
import org.firnline.evidence.Band;

/**
 * What one hold is expected to do with a load. Bands hold nine chances in ten.
 *
 * @param typicalTime_s primary drying of a typical vessel, away from any edge
 * @param lastTime_s primary drying of the last vessel: quantile 1 − 1/(2N) of the load
 * @param warmestTemperature_K greatest temperature of the warmest vessel: same quantile, at an edge
 *     where vessels stand there
 * @param overheatingRisk probability that the warmest vessel exceeds the critical temperature
 * @param peakRate_kg_per_s greatest vapor rate of the whole load
 * @param shareOfDoubt share of the variance of the last finish that each unknown causes, 0 to 1
 * @param points the run over time; empty where nothing dries
 */
public record Prediction(
    Band typicalTime_s,
    Band lastTime_s,
    Band warmestTemperature_K,
    double overheatingRisk,
    Band peakRate_kg_per_s,
    Map<Unknown, Double> shareOfDoubt,
    List<PredictedPoint> points) {

  public Prediction {
    shareOfDoubt = Map.copyOf(shareOfDoubt);
    points = List.copyOf(points);
  }

  /** Whether a typical vessel dries at the best values. */
  public boolean dries() {
    return Double.isFinite(typicalTime_s.best());
  }
}
