package org.firnline.planning.forecast;

import org.firnline.drying.dryer.VaporPath;
import org.firnline.drying.primary.FastFront;
import org.firnline.drying.primary.FrontFollower;
import org.firnline.lab.Range;

/**
 * The fastest way through primary drying that keeps every limit at every moment, where everything
 * is as is most plausible: the ideal that no dryer can be told, and from which recipes of few steps
 * are cut.
 *
 * <p>Follows the vessel that dries last through even steps of its depth. At each of these nodes and
 * each pressure the warmest shelf is found that keeps every wet vessel below its limit and the
 * vapor within what the dryer carries.
 */
public final class AdmissiblePath {

  /** Steps of depth. */
  public static final int NODES = 24;

  private static final int HALVINGS = 11;

  private final SampledVessels load;
  private final VaporPath path;
  private final Range shelves;
  private final double[] pressures;
  private final Demand demand;
  private final FrontFollower[] fronts;
  private final double[] depth;
  private final boolean[] dry;
  private final int slowest;
  private final double[][] warmestShelf = new double[NODES + 1][];
  private final int[] best = new int[NODES + 1];
  private final double[] times = new double[NODES + 1];

  /**
   * What the path must keep.
   *
   * @param offset how far below its critical temperature every item stays, K
   * @param carried share of the dryer's capability that may be used; above 0 to 1
   */
  public record Demand(double offset, double carried) {}

  /**
   * The path of a load.
   *
   * @param pressures_Pa chamber pressures to choose from, rising; at least one
   */
  public static AdmissiblePath of(
      LoadForecaster forecaster, Range shelves, double[] pressures_Pa, Demand demand) {
    AdmissiblePath made =
        new AdmissiblePath(
            forecaster.middleVessels(), forecaster.path(), shelves, pressures_Pa.clone(), demand);
    made.follow();
    return made;
  }

  private AdmissiblePath(
      SampledVessels load, VaporPath path, Range shelves, double[] pressures, Demand demand) {
    this.load = load;
    this.path = path;
    this.shelves = shelves;
    this.pressures = pressures;
    this.demand = demand;
    int size = load.size();
    this.fronts = new FrontFollower[size];
    for (int i = 0; i < size; i++) {
      fronts[i] = new FrontFollower(load.vessel(i));
    }
    this.depth = new double[size];
    this.dry = new boolean[size];
    this.slowest = slowest();
  }

  /** Whether some setting keeps every limit at every node. */
  public boolean exists() {
    return Double.isFinite(times[NODES]);
  }

  /** When the last vessel passes {@code node}, s. */
  public double time(int node) {
    return times[node];
  }

  /** The shelf of the ideal at {@code node}, K. */
  public double shelf(int node) {
    return warmestShelf[node][best[node]];
  }

  /** The pressure of the ideal at {@code node}, Pa. */
  public double pressure(int node) {
    return pressures[best[node]];
  }

  /** The warmest shelf that keeps every limit from one node to another; NaN where none does. */
  public double shelf(int from, int to, int pressure) {
    double shelf = Double.POSITIVE_INFINITY;
    for (int node = from; node <= to; node++) {
      shelf = Math.min(shelf, warmestShelf[node][pressure]);
      if (Double.isNaN(shelf)) {
        return Double.NaN;
      }
    }
    return shelf;
  }

  /** How long the last vessel takes from one node to another at that shelf, s; may be infinite. */
  public double time(int from, int to, int pressure) {
    double shelf = shelf(from, to, pressure);
    if (Double.isNaN(shelf)) {
      return Double.POSITIVE_INFINITY;
    }
    double time = 0;
    double before = slowness(from, shelf, pressures[pressure]);
    for (int node = from + 1; node <= to; node++) {
      double after = slowness(node, shelf, pressures[pressure]);
      time += step() * (before + after) / 2;
      before = after;
    }
    return time;
  }

  private void follow() {
    for (int node = 0; node <= NODES; node++) {
      warmestShelf[node] = shelves();
      best[node] = fastest(node);
      if (best[node] < 0) {
        times[NODES] = Double.POSITIVE_INFINITY;
        return;
      }
      if (node < NODES) {
        times[node + 1] = times[node] + advance(node);
      }
    }
  }

  private double[] shelves() {
    double[] found = new double[pressures.length];
    for (int i = 0; i < pressures.length; i++) {
      found[i] = warmest(pressures[i]);
    }
    return found;
  }

  private int fastest(int node) {
    int found = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < pressures.length; i++) {
      if (!Double.isNaN(warmestShelf[node][i])) {
        double slowness = slowness(node, warmestShelf[node][i], pressures[i]);
        if (slowness < least) {
          least = slowness;
          found = i;
        }
      }
    }
    return found;
  }

  /** Moves every vessel on while the slowest goes from one node to the next. */
  private double advance(int node) {
    double shelf = warmestShelf[node][best[node]];
    double pressure_Pa = pressures[best[node]];
    double time = step() * slowness(node, shelf, pressure_Pa);
    double coldest = FastFront.coldest(pressure_Pa);
    for (int i = 0; i < depth.length; i++) {
      double rate = solve(i, shelf, pressure_Pa, coldest);
      depth[i] += time * rate / load.vessel(i).geometry().icePerDepth(depth[i]);
      double thickness = load.vessel(i).geometry().thickness();
      if (i != slowest && depth[i] >= thickness) {
        depth[i] = thickness;
        dry[i] = true;
      }
    }
    depth[slowest] = (node + 1) * step();
    return time;
  }

  private double step() {
    return load.vessel(slowest).geometry().thickness() / NODES;
  }

  /** Seconds per depth of the slowest vessel, s/m. */
  private double slowness(int node, double shelf_K, double pressure_Pa) {
    double at = node * step();
    double rate =
        fronts[slowest].solve(
            load.heat(slowest).at(shelf_K, pressure_Pa),
            pressure_Pa,
            FastFront.coldest(pressure_Pa),
            at);
    return load.vessel(slowest).geometry().icePerDepth(at) / rate;
  }

  private double warmest(double pressure_Pa) {
    double coldest = FastFront.coldest(pressure_Pa);
    if (!isAllowed(shelves.low(), pressure_Pa, coldest)) {
      return Double.NaN;
    }
    if (isAllowed(shelves.high(), pressure_Pa, coldest)) {
      return shelves.high();
    }
    double low = shelves.low();
    double high = shelves.high();
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (low + high) / 2;
      if (isAllowed(middle, pressure_Pa, coldest)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean isAllowed(double shelf_K, double pressure_Pa, double coldest) {
    double total = 0;
    for (int i = 0; i < depth.length; i++) {
      if (dry[i]) {
        continue;
      }
      total += load.count(i) * solve(i, shelf_K, pressure_Pa, coldest);
      double limit = load.limit(i) - demand.offset();
      if (fronts[i].melts() || fronts[i].warmest() > limit) {
        return false;
      }
    }
    return total <= demand.carried() * path.rate(pressure_Pa);
  }

  private double solve(int i, double shelf_K, double pressure_Pa, double coldest) {
    return fronts[i].solve(load.heat(i).at(shelf_K, pressure_Pa), pressure_Pa, coldest, depth[i]);
  }

  /** The vessel with most of its ice left, by its own resistances, at a mild setting. */
  private int slowest() {
    double pressure_Pa = pressures[0];
    double coldest = FastFront.coldest(pressure_Pa);
    double shelf = shelves.nearest(load.limitOfItem(0));
    int found = 0;
    double longest = 0;
    for (int i = 0; i < depth.length; i++) {
      double thickness = load.vessel(i).geometry().thickness();
      double rate =
          fronts[i].solve(load.heat(i).at(shelf, pressure_Pa), pressure_Pa, coldest, thickness / 2);
      double time = load.vessel(i).geometry().iceMass() / rate;
      if (time > longest) {
        longest = time;
        found = i;
      }
    }
    return found;
  }
}
