/**
 * Today: every dryer, what it is doing and what a person must do next. Start reading at {@link
 * org.firnline.app.today.TodayPage}.
 */
@NullMarked
package org.firnline.app.today;

import org.jspecify.annotations.NullMarked;
