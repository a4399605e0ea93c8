/**
 * The program people run. Start reading at {@link org.firnline.app.Firnline}, which hands every
 * word typed at a terminal to {@code cli}; the pages live in one package per thing a person does.
 */
@NullMarked
package org.firnline.app;

import org.jspecify.annotations.NullMarked;
