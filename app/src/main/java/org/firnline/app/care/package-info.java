/**
 * The health of each dryer over its runs: trends, what changed and when, what is due, who used it.
 * Start reading at {@link org.firnline.app.care.CareViews}.
 */
@NullMarked
package org.firnline.app.care;

import org.jspecify.annotations.NullMarked;
