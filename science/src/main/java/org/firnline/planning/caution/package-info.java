/**
 * What can hurt people, dryer or neighbors in a load: a short usual caution at the moment it
 * matters, never an assessment. Local rules and trained, authorised people decide. Uses {@code lab}
 * and {@code matter}. Start reading at {@link org.firnline.planning.caution.CautionList}.
 */
@NullMarked
package org.firnline.planning.caution;

import org.jspecify.annotations.NullMarked;
