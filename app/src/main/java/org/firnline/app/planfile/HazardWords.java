package org.firnline.app.planfile;

import java.util.List;
import java.util.stream.Stream;
import org.firnline.app.words.Words;
import org.firnline.lab.Hazard;
import org.firnline.lab.Load;
import org.firnline.lab.Vessel;
import org.firnline.planning.Verdict;

/** The usual cautions for what people declared and for the vessels they use. */
public final class HazardWords {

  /**
   * A caution.
   *
   * @param code of the hazard, or of the vessel
   * @param verdict watch, or stop where people with authority must decide first
   * @param sentence for people
   */
  public record Caution(String code, Verdict verdict, String sentence) {}

  private static final List<String> STOPS = List.of("azide", "energetic");
  private static final int RISKY_GROUP = 2;

  private final Words words;

  public HazardWords(Words words) {
    this.words = words;
  }

  /** Every caution of a load, the gravest first. */
  public List<Caution> of(Load load) {
    Stream<Caution> declared = load.hazards().stream().map(this::of);
    Stream<Caution> mixed =
        load.mixesFoodWithOthers()
            ? Stream.of(caution("mixed-food", Verdict.STOP))
            : Stream.empty();
    Stream<Caution> glass =
        load.portions().stream()
            .map(portion -> kind(portion.item().vessel()))
            .distinct()
            .map(kind -> caution("vessel-" + kind, Verdict.WATCH));
    return Stream.of(declared, mixed, glass)
        .flatMap(all -> all)
        .sorted((a, b) -> b.verdict().compareTo(a.verdict()))
        .toList();
  }

  private Caution of(Hazard hazard) {
    boolean group = hazard instanceof Hazard.Biological b && b.group() > RISKY_GROUP;
    return caution(
        hazard.code(), group || STOPS.contains(hazard.code()) ? Verdict.STOP : Verdict.WATCH);
  }

  private Caution caution(String code, Verdict verdict) {
    return new Caution(code, verdict, words.say("hazard." + code));
  }

  private static String kind(Vessel vessel) {
    return vessel.fold(
        new Vessel.Cases<String>() {
          @Override
          public String vial(org.firnline.lab.Vial vial) {
            return "glass";
          }

          @Override
          public String tray(org.firnline.lab.Tray tray) {
            return "tray";
          }

          @Override
          public String flask(org.firnline.lab.Flask flask) {
            return "glass";
          }

          @Override
          public String piece(org.firnline.lab.Piece piece) {
            return "piece";
          }
        });
  }
}
