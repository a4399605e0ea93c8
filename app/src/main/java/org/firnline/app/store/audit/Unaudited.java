package org.firnline.app.store.audit;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a write that leaves no entry in the audit. Only for what is not a record: values that can
 * be computed again, and counters of the program itself.
 */
@Target({ElementType.METHOD, ElementType.TYPE})
@Retention(RetentionPolicy.CLASS)
public @interface Unaudited {
  /** Why it is not a record. */
  String value();
}
