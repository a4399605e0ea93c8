package org.firnline.planning.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.firnline.drying.dryer.VaporPath;
import org.firnline.evidence.Band;
import org.firnline.evidence.Estimate;
import org.firnline.lab.LoadItem;
import org.firnline.lab.Range;
import org.firnline.numerics.Quantile;
import org.firnline.numerics.SobolPoints;

/**
 * Draws the window map with its doubt: the 128 runs of {@link LoadForecaster} in every cell, by the
 * answer of each vessel to its heat transfer and resistance ({@code VesselSurface}).
 *
 * <p>Assumes the dryer holds the pressure; where it cannot, the capability line says so. Columns
 * are computed on all processors; the answer does not depend on how many there are.
 */
public final class WindowDrawer {

  private static final long SEED = 40_417;
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  /** Parabolas are drawn through this many standard deviations. */
  private static final double SPAN = 2;

  /** Room for the differences between vessels where the run itself is known. */
  private static final double LEAST_SPAN = 0.15;

  private final Sharing sharing;
  private final List<LoadItem> items;
  private final List<Place> places;
  private final List<RunDraw> draws;
  private final VaporPath path;
  private final double risk;

  /**
   * @param risk accepted probability of exceeding a critical temperature; above 0, below 1
   */
  public WindowDrawer(Sharing sharing, double risk) {
    this.sharing = sharing;
    this.risk = risk;
    Places all = new Places(sharing);
    this.items = all.items();
    this.places = all.all();
    this.draws =
        SobolPoints.of(LoadForecaster.RUNS, RunDraw.dimensions(items.size()), SEED).stream()
            .map(point -> RunDraw.at(point, items.size()))
            .toList();
    this.path = VaporPath.of(sharing.dryer().capability(), sharing.dryer().collector());
  }

  /**
   * The map.
   *
   * @param columns pressures, even in their logarithm; 2 or more
   * @param rows shelf temperatures; 2 or more
   */
  public WindowWithDoubt draw(int columns, int rows) {
    Range pressure = sharing.dryer().pressure();
    Range shelf = sharing.dryer().shelfTemperature();
    List<Double> pressures =
        IntStream.range(0, columns)
            .mapToObj(
                i ->
                    pressure.low()
                        * Math.pow(pressure.high() / pressure.low(), i / (columns - 1.0)))
            .toList();
    List<Double> shelves =
        IntStream.range(0, rows)
            .mapToObj(i -> shelf.low() + (shelf.high() - shelf.low()) * i / (rows - 1.0))
            .toList();
    List<Column> drawn = pressures.parallelStream().map(at -> new Column(at, shelves)).toList();
    return new WindowWithDoubt(
        pressures,
        shelves,
        IntStream.range(0, rows)
            .mapToObj(row -> drawn.stream().map(column -> column.cells.get(row)).toList())
            .toList(),
        drawn.stream().map(Column::productLimit).toList(),
        drawn.stream().map(Column::confidentLimit).toList(),
        drawn.stream().map(Column::capabilityLimit).toList(),
        path.floor(),
        risk,
        draws.size());
  }

  private double[] runHeat(int place) {
    Estimate doubt = SampledVessels.heatTransfer(items.get(places.get(place).item()).vessel());
    double spread = doubt.spread() / doubt.best();
    return draws.stream().mapToDouble(draw -> spread * draw.heat()).toArray();
  }

  private double[] runCake(int place) {
    int item = places.get(place).item();
    Estimate doubt = items.get(item).product().resistanceFactor();
    double spread = doubt.spread() / doubt.best();
    return draws.stream().mapToDouble(draw -> spread * draw.resistance().get(item)).toArray();
  }

  /** One pressure. */
  private final class Column {

    private final double pressure_Pa;
    private final List<Double> shelves;
    private final List<WindowWithDoubt.Cell> cells = new ArrayList<>();
    private final double[][] excess;
    private final double[][] load;

    Column(double pressure_Pa, List<Double> shelves) {
      this.pressure_Pa = pressure_Pa;
      this.shelves = shelves;
      this.excess = new double[shelves.size()][draws.size()];
      this.load = new double[shelves.size()][draws.size()];
      for (int row = 0; row < shelves.size(); row++) {
        cells.add(cell(row));
      }
    }

    private WindowWithDoubt.Cell cell(int row) {
      double[] time = new double[draws.size()];
      Arrays.fill(excess[row], Double.NEGATIVE_INFINITY);
      for (int place = 0; place < places.size(); place++) {
        add(row, place, time);
      }
      int over = 0;
      for (double value : excess[row]) {
        over += value > 0 ? 1 : 0;
      }
      Quantile quantile = new Quantile(time);
      return new WindowWithDoubt.Cell(
          new Band(quantile.at(LOW), quantile.at(1.0 / 2), quantile.at(HIGH)),
          over / (double) draws.size());
    }

    private void add(int row, int number, double[] time) {
      Place place = places.get(number);
      double[] heat = runHeat(number);
      double[] cake = runCake(number);
      VesselSurface surface =
          new VesselSurface(place.group(), shelves.get(row), pressure_Pa, span(heat), span(cake));
      double carried = path.rate(pressure_Pa);
      Estimate critical = items.get(place.item()).product().critical().temperature();
      for (int run = 0; run < time.length; run++) {
        RunDraw draw = draws.get(run);
        surface.look(heat[run], cake[run]);
        load[row][run] += place.group().count() * surface.peakRate() / carried;
        double last = RunDraw.extreme(draw.lastShare(), place.members());
        Lean lean = place.last();
        surface.look(heat[run] + lean.heat() * last, cake[run] + lean.resistance() * last);
        double fill = lean.fillFactor(last);
        time[run] = Math.max(time[run], surface.time() * fill * Math.sqrt(fill));
        double warm = RunDraw.extreme(draw.warmestShare(), place.members());
        Lean warmer = place.warmest();
        surface.look(heat[run] + warmer.heat() * warm, cake[run] + warmer.resistance() * warm);
        double limit = critical.shifted(draw.critical().get(place.item()));
        excess[row][run] = Math.max(excess[row][run], surface.warmest() - limit);
      }
    }

    /** Half width of the parabolas in the logarithm of a factor. */
    private static double span(double... factors) {
      double square = 0;
      for (double factor : factors) {
        square += factor * factor / factors.length;
      }
      return SPAN * Math.sqrt(square) + LEAST_SPAN;
    }

    private Optional<Band> productLimit() {
      return band(crossings(excess, 0));
    }

    private Optional<Band> capabilityLimit() {
      return band(crossings(load, 1));
    }

    /** The shelf that only the accepted share of the runs crosses below. */
    private Optional<Double> confidentLimit() {
      double limit = new Quantile(crossings(excess, 0)).at(risk);
      return limit < shelves.get(0)
          ? Optional.empty()
          : Optional.of(Math.min(limit, shelves.get(shelves.size() - 1)));
    }

    private Optional<Band> band(double... crossings) {
      Quantile quantile = new Quantile(crossings);
      if (Double.isInfinite(quantile.at(1.0 / 2))) {
        return Optional.empty();
      }
      double least = shelves.get(0);
      double most = shelves.get(shelves.size() - 1);
      return Optional.of(
          new Band(
              Math.max(least, quantile.at(LOW)),
              Math.max(least, quantile.at(1.0 / 2)),
              Math.max(least, Math.min(most, quantile.at(HIGH)))));
    }

    /**
     * For each run, the shelf at which a value passes a level, on straight lines between rows;
     * below the rows minus infinity, above them infinity.
     */
    private double[] crossings(double[][] values, double level) {
      double[] found = new double[draws.size()];
      for (int run = 0; run < found.length; run++) {
        found[run] = crossing(values, level, run);
      }
      return found;
    }

    private double crossing(double[][] values, double level, int run) {
      for (int row = 0; row < values.length; row++) {
        if (values[row][run] > level) {
          if (row == 0) {
            return Double.NEGATIVE_INFINITY;
          }
          double below = values[row - 1][run];
          double share = Math.min(1, (level - below) / (values[row][run] - below));
          double low = shelves.get(row - 1);
          return low + (Double.isNaN(share) ? 1 : share) * (shelves.get(row) - low);
        }
      }
      return Double.POSITIVE_INFINITY;
    }
  }
}
