/**
 * What matters most: how much of the doubt about time and temperature each unknown causes, and
 * which cheap measurement would narrow it. Uses {@code planning.forecast} and {@code numerics}.
 * Start reading at {@link org.firnline.planning.doubt.WhatMatters}.
 */
@NullMarked
package org.firnline.planning.doubt;

import org.jspecify.annotations.NullMarked;
