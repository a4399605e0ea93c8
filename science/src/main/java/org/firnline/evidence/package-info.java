/**
 * Where a value comes from and how sure it is: sources, provenance, uncertain values, and problems
 * with what a person gave. Uses {@code units} only. Start reading at {@link
 * org.firnline.evidence.Estimate}.
 */
@NullMarked
package org.firnline.evidence;

import org.jspecify.annotations.NullMarked;
