/**
 * Any dryer's log file becomes a {@link org.firnline.logs.Log} of channels with roles, units and
 * time, together with an account of how it was read: what was guessed, what must be asked, which
 * rows were flagged or rejected.
 *
 * <p>May use: org.firnline.units, org.firnline.evidence. Start reading at {@link
 * org.firnline.logs.LogReader}.
 */
@NullMarked
package org.firnline.logs;

import org.jspecify.annotations.NullMarked;
