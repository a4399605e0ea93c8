/**
 * What one column of a log becomes: a named channel with a role, a unit and a compact series of SI
 * values, each with a quality.
 *
 * <p>May use: org.firnline.units. Start reading at {@link org.firnline.logs.channel.Channel}.
 */
@NullMarked
package org.firnline.logs.channel;

import org.jspecify.annotations.NullMarked;
