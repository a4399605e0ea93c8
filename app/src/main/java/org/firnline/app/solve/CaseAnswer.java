package org.firnline.app.solve;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The numbers of one answer under their unit-suffixed keys, in the order they were found. */
final class CaseAnswer {

  private final Map<String, Object> values = new LinkedHashMap<>();

  CaseAnswer put(String key, double value) {
    values.put(key, plain(value));
    return this;
  }

  CaseAnswer put(String key, String word) {
    values.put(key, word);
    return this;
  }

  CaseAnswer put(String key, boolean truth) {
    values.put(key, truth);
    return this;
  }

  CaseAnswer put(String key, List<Double> list) {
    values.put(key, list.stream().map(CaseAnswer::plain).toList());
    return this;
  }

  /** No such number exists: the case file writes {@code null}. */
  CaseAnswer undefined(String key) {
    values.put(key, Undefined.VALUE);
    return this;
  }

  Map<String, Object> values() {
    return Collections.unmodifiableMap(values);
  }

  /** JSON has no infinity; the case file writes it as a word. */
  private static Object plain(double value) {
    if (value == Double.POSITIVE_INFINITY) {
      return "inf";
    }
    return Double.isNaN(value) ? Undefined.VALUE : (Object) value;
  }

  /** Stands for a number that does not exist. */
  enum Undefined {
    VALUE;

    @Override
    public String toString() {
      return "undefined";
    }
  }
}
