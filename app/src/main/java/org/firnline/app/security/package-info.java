/**
 * What a browser may do here: loopback only, no foreign host names, nothing loaded from elsewhere,
 * forms that only our own pages can send. Start reading at {@link
 * org.firnline.app.security.WebSecurity}.
 */
@NullMarked
package org.firnline.app.security;

import org.jspecify.annotations.NullMarked;
