/**
 * Files that are no plain table become one: packed files are unpacked, JSON lines and long tables
 * are turned into a wide table that the table reader understands.
 *
 * <p>May use: org.firnline.logs.text, .sheet. Start reading at {@link
 * org.firnline.logs.form.Unpacking}.
 */
@NullMarked
package org.firnline.logs.form;

import org.jspecify.annotations.NullMarked;
