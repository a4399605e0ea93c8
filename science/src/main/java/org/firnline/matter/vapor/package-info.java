/**
 * Water vapor as a dilute gas: viscosity, thermal conductivity and heat-capacity ratio. Uses {@code
 * matter}. Start reading at {@link org.firnline.matter.vapor.HuberEtAl2009Viscosity}.
 */
@NullMarked
package org.firnline.matter.vapor;

import org.jspecify.annotations.NullMarked;
