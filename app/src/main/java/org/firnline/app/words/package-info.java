/**
 * What people read: the text bundle, and numbers, quantities and times as text. Knows no feature
 * and needs no web application. Start reading at {@link org.firnline.app.words.Words}.
 */
@NullMarked
package org.firnline.app.words;

import org.jspecify.annotations.NullMarked;
