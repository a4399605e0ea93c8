/**
 * Simulated runs with their truth, to test reviews against.
 *
 * <p>May use: org.firnline.drying, org.firnline.review. Start reading at {@link
 * org.firnline.review.simulated.SimulatedTruthTest}.
 */
@NullMarked
package org.firnline.review.simulated;

import org.jspecify.annotations.NullMarked;
