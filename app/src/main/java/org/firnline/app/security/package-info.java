/**
 * Who may come in and what a browser may do here: the one person at this machine, or people who
 * sign in once the laboratory is shared; keys for devices; nothing loaded from elsewhere, forms
 * that only our own pages can send. Start reading at {@link org.firnline.app.security.WebSecurity};
 * what each role may do is in {@link org.firnline.app.security.Rights}.
 */
@NullMarked
package org.firnline.app.security;

import org.jspecify.annotations.NullMarked;
