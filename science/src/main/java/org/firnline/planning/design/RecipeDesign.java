package org.firnline.planning.design;

import java.util.List;
import java.util.Optional;
import org.firnline.drying.secondary.SecondaryDesign;

/**
 * The answer to a wish for a recipe.
 *
 * @param proposals each as simulated, the designed one first; without a designed one no setting of
 *     this dryer keeps the limits at the accepted risk
 * @param wishes what was asked
 * @param secondary what came of the wish for secondary drying; empty if there was none
 */
public record RecipeDesign(
    List<Proposal> proposals, DesignWishes wishes, Optional<SecondaryDesign> secondary) {

  public RecipeDesign {
    proposals = List.copyOf(proposals);
  }

  /** The proposal of this kind. */
  public Optional<Proposal> of(Proposal.Kind kind) {
    return proposals.stream().filter(proposal -> proposal.kind() == kind).findFirst();
  }

  /** How much longer than the ideal the designed recipe takes, as a share of the ideal's time. */
  public Optional<Double> penalty() {
    return of(Proposal.Kind.DESIGNED)
        .flatMap(
            designed ->
                of(Proposal.Kind.IDEAL).map(ideal -> designed.time_s() / ideal.time_s() - 1));
  }
}
