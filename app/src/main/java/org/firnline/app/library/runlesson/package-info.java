/**
 * What a run teaches, for people and programs. Start reading at {@link
 * org.firnline.app.library.runlesson.RunLessons}.
 */
@NullMarked
package org.firnline.app.library.runlesson;

import org.jspecify.annotations.NullMarked;
