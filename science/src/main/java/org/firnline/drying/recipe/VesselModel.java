package org.firnline.drying.recipe;

import org.firnline.numerics.DormandPrince5;

/** Equations of one vessel under a schedule; component 0 is always the dried depth in m. */
interface VesselModel extends DormandPrince5.Equations {

  /** State at time 0. */
  double[] start();

  /** Error allowed in each component, in its unit. */
  double[] tolerances();

  /** Depth at which the ice is gone, m. */
  double thickness();

  /** Settings at and after {@code time_s} are not to be looked at. */
  void holdBefore(double time_s);

  /** What the state means. */
  ScheduledRun.Moment moment(double time_s, double[] state);
}
