/**
 * The best settings at one moment of drying: the fastest shelf temperature and chamber pressure
 * that product and dryer allow. Uses {@code drying}, {@code lab} and {@code numerics}. Start
 * reading at {@link org.firnline.planning.point.BestPointSearch}.
 */
@NullMarked
package org.firnline.planning.point;

import org.jspecify.annotations.NullMarked;
