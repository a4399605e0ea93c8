/**
 * The JSON interface: the same answers as the commands, over HTTP. It answers and keeps nothing.
 * Start reading at {@link org.firnline.app.api.PlanController}.
 */
@NullMarked
package org.firnline.app.api;

import org.jspecify.annotations.NullMarked;
