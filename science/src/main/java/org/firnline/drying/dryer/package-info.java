/**
 * What a dryer carries away: vapor through duct or line, ice on the collector, and the chamber
 * pressure below which it cannot go. Uses {@code lab} and {@code matter}. Start reading at {@link
 * org.firnline.drying.dryer.VaporPath}.
 */
@NullMarked
package org.firnline.drying.dryer;

import org.jspecify.annotations.NullMarked;
