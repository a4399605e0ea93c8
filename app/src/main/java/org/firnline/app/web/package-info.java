/**
 * What all pages share: the web application itself, layout, numbers and times as shown, problem
 * pages. Knows no feature. Start reading at {@link org.firnline.app.web.WebApplication}.
 */
@NullMarked
package org.firnline.app.web;

import org.jspecify.annotations.NullMarked;
