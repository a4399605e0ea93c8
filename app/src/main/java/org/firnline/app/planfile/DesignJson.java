package org.firnline.app.planfile;

import java.util.List;
import org.firnline.evidence.Band;
import org.firnline.lab.Recipe;
import org.firnline.lab.RecipeStep;
import org.firnline.planning.design.PrimaryStep;
import org.firnline.planning.design.Proposal;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The recipe of a plan and what stands beside it, for programs: SI numbers, units in the keys. */
public final class DesignJson {
  private final HazardWords hazards;

  public DesignJson(HazardWords hazards) {
    this.hazards = hazards;
  }

  /** Adds recipe, alternatives, items and cautions to an answer. */
  public void add(ObjectNode json, DesignedPlan plan) {
    Proposal first = plan.first();
    json.put("found", plan.isFound());
    ObjectNode design = json.putObject("design");
    proposal(design, first);
    first.recipe().ifPresent(recipe -> design.set("recipe", recipe(recipe)));
    plan.design().penalty().ifPresent(share -> design.put("penaltyToIdeal_fraction", share));
    ArrayNode others = json.putArray("alternatives");
    plan.design().proposals().stream()
        .skip(1)
        .forEach(proposal -> proposal(others.addObject(), proposal));
    ArrayNode items = json.putArray("items");
    for (SharedRun.Item item : SharedRun.of(plan).items()) {
      ObjectNode entry = items.addObject();
      entry.put("product", item.shared().name());
      entry.put("owner", item.shared().owner());
      band(entry, "dryingTime_s", item.shared().lastTime_s());
      band(entry, "dryingTimeAlone_s", item.aloneTime_s());
      band(entry, "warmestTemperature_K", item.shared().warmest_K());
      entry.put("overheatingRisk_fraction", item.shared().overheatingRisk());
      entry.put("rulesTime", item.rulesTime());
      entry.put("rulesTemperature", item.rulesTemperature());
    }
    ArrayNode cautions = json.putArray("cautions");
    for (HazardWords.Caution caution : hazards.of(plan.input().whole())) {
      ObjectNode entry = cautions.addObject();
      entry.put("hazard", caution.code());
      entry.put("verdict", CheckWords.key(caution.verdict()));
      entry.put("text", caution.sentence());
    }
  }

  /** A recipe as steps to type, SI. */
  public static ObjectNode recipe(Recipe recipe) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("shelfStart_K", recipe.shelfStart());
    ArrayNode steps = json.putArray("steps");
    for (RecipeStep step : recipe.steps()) {
      ObjectNode entry = steps.addObject();
      entry.put("phase", step.phase().label());
      entry.put("shelfTemperature_K", step.shelfTarget());
      entry.put("ramp_K_per_s", step.ramp());
      step.pressure()
          .ifPresentOrElse(
              pascal -> entry.put("chamberPressure_Pa", pascal),
              () -> entry.putNull("chamberPressure_Pa"));
      entry.put("hold_s", step.hold());
    }
    return json;
  }

  private static void proposal(ObjectNode json, Proposal proposal) {
    json.put("kind", CheckWords.key(proposal.kind()));
    band(json, "dryingTime_s", proposal.outlook().lastTime_s());
    band(json, "warmestTemperature_K", proposal.outlook().warmest_K());
    band(json, "peakRate_kg_per_s", proposal.outlook().peakRate_kg_per_s());
    json.put("overheatingRisk_fraction", proposal.outlook().overheatingRisk());
    json.put("pressureRisk_fraction", proposal.outlook().pressureRisk());
    proposal.source().ifPresent(source -> json.put("source", source.toString()));
    primary(json.putArray("primarySteps"), proposal.steps());
  }

  private static void primary(ArrayNode steps, List<PrimaryStep> primary) {
    for (PrimaryStep step : primary) {
      ObjectNode entry = steps.addObject();
      entry.put("shelfTemperature_K", step.shelf_K());
      step.pressure_Pa()
          .ifPresentOrElse(
              pascal -> entry.put("chamberPressure_Pa", pascal),
              () -> entry.putNull("chamberPressure_Pa"));
      entry.put("duration_s", step.duration_s());
    }
  }

  private static void band(ObjectNode json, String key, Band band) {
    ObjectNode entry = json.putObject(key);
    number(entry, "low", band.low());
    number(entry, "best", band.best());
    number(entry, "high", band.high());
  }

  private static void number(ObjectNode json, String key, double value) {
    if (Double.isFinite(value)) {
      json.put(key, value);
    } else {
      json.put(key, "inf");
    }
  }
}
