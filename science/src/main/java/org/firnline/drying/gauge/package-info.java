/**
 * What pressure gauges read in mixtures of water vapor and gas, and what their ratio tells about
 * the end of drying. Start reading at {@link org.firnline.drying.gauge.RatioCurve}.
 */
@NullMarked
package org.firnline.drying.gauge;

import org.jspecify.annotations.NullMarked;
