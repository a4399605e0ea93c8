/**
 * Runs: bring in a log, see what happened. Start reading at {@link org.firnline.app.run.RunPage}.
 */
@NullMarked
package org.firnline.app.run;

import org.jspecify.annotations.NullMarked;
