/**
 * What runs and small tests teach about dryers, vessels and products: values with their
 * uncertainty, and a plain word on what the data cannot tell. May use {@code review}, {@code logs},
 * {@code drying}, {@code lab}, {@code numerics}, {@code matter}, {@code evidence} and {@code
 * units}. Start reading at {@link org.firnline.learning.icerun.IceRun}.
 */
@NullMarked
package org.firnline.learning;

import org.jspecify.annotations.NullMarked;
