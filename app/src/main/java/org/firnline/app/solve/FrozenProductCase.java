package org.firnline.app.solve;

import org.firnline.drying.primary.FrontGeometry;
import org.firnline.drying.primary.Shell;
import org.firnline.lab.Solution;

/** Masses and depth of a frozen product. */
final class FrozenProductCase implements CaseKind {

  @Override
  public CaseAnswer solve(CaseInputs inputs) {
    Solution solution = ProductInputs.solution(inputs);
    double fill = inputs.number("fill");
    FrontGeometry geometry = ProductInputs.geometry(inputs);
    CaseAnswer answer =
        new CaseAnswer()
            .put("mass_kg", solution.mass(fill))
            .put("solid_kg", solution.solidsMass(fill))
            .put("unfrozen_kg", solution.unfrozenMass(fill))
            .put("ice_kg", solution.iceMass(fill))
            .put("frozen_volume_m3", solution.frozenVolume(fill));
    if (geometry instanceof Shell shell) {
      return answer
          .put("thickness_m", shell.thickness())
          .put("ice_per_volume_kg_per_m3", shell.icePerVolume())
          .put("ice_per_depth_start_kg_per_m", shell.icePerDepth(0))
          .put("ice_per_depth_end_kg_per_m", shell.icePerDepth(shell.thickness()));
    }
    return answer
        .put("depth_m", geometry.thickness())
        .put("ice_per_depth_kg_per_m", geometry.icePerDepth(0));
  }
}
