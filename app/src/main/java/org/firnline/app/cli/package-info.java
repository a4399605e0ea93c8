/**
 * The commands typed at a terminal. Only {@code serve} and {@code demo} start the web application;
 * the others answer and leave. Start reading at {@link org.firnline.app.cli.FirnlineCommand}.
 */
@NullMarked
package org.firnline.app.cli;

import org.jspecify.annotations.NullMarked;
