/**
 * The invented Harrow Fen Collection. Start reading at {@link
 * org.firnline.app.demo.HarrowFenCollection}.
 */
@NullMarked
package org.firnline.app.demo;

import org.jspecify.annotations.NullMarked;
