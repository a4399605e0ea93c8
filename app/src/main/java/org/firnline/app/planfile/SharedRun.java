package org.firnline.app.planfile;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.firnline.evidence.Band;
import org.firnline.lab.Load;
import org.firnline.lab.Portion;
import org.firnline.planning.forecast.ItemForecast;

/**
 * What sharing a run means for each item of a load.
 *
 * @param items in the order of the load; empty for a load of one item
 */
public record SharedRun(List<Item> items) {

  /**
   * One item.
   *
   * @param shared what the shared recipe does to it
   * @param aloneTime_s its last vessel in a recipe of its own
   * @param rulesTime whether it is the last to be dry
   * @param rulesTemperature whether it is the most likely to be too warm, so that all others dry
   *     more gently
   */
  public record Item(
      ItemForecast shared, Band aloneTime_s, boolean rulesTime, boolean rulesTemperature) {

    /** Time it would gain alone, s; 0 or less where it gains nothing. */
    public double gainAlone_s(double sharedEnd_s) {
      return sharedEnd_s - aloneTime_s.best();
    }
  }

  public SharedRun {
    items = List.copyOf(items);
  }

  /** Looks at a design of several items; each is designed once more for itself. */
  public static SharedRun of(DesignedPlan plan) {
    List<Portion> portions = plan.input().whole().portions();
    if (portions.size() < 2) {
      return new SharedRun(List.of());
    }
    List<ItemForecast> shared = plan.first().outlook().items();
    int slowest = greatest(shared, Comparator.comparingDouble(item -> item.lastTime_s().best()));
    List<Band> alone =
        portions.stream()
            .map(portion -> DesignedPlan.of(plan.input(), new Load(List.of(portion))))
            .map(DesignedPlan::first)
            .map(proposal -> proposal.outlook().lastTime_s())
            .toList();
    int coldest = coldest(portions);
    return new SharedRun(
        IntStream.range(0, portions.size())
            .mapToObj(i -> new Item(shared.get(i), alone.get(i), i == slowest, i == coldest))
            .toList());
  }

  private static int greatest(List<ItemForecast> items, Comparator<ItemForecast> by) {
    return IntStream.range(0, items.size())
        .boxed()
        .max((a, b) -> by.compare(items.get(a), items.get(b)))
        .orElseThrow();
  }

  /** The item with the lowest critical temperature bounds the shelf for all. */
  private static int coldest(List<Portion> portions) {
    return IntStream.range(0, portions.size())
        .boxed()
        .min(
            Comparator.comparingDouble(
                i -> portions.get(i).item().product().critical().temperature().best()))
        .orElseThrow();
  }
}
