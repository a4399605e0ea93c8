/**
 * Says what happened in a run: phases, endpoints, excursions and findings, each with its evidence.
 *
 * <p>May use: org.firnline.logs, org.firnline.lab, org.firnline.drying. Start reading at {@link
 * org.firnline.review.Reviewer}.
 */
@NullMarked
package org.firnline.review;

import org.jspecify.annotations.NullMarked;
