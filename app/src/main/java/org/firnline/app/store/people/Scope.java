package org.firnline.app.store.people;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a key may be used for; a key has no other rights. */
public enum Scope {
  /** Read plans, runs and answers. */
  READ,

  /** Ask for a plan or a review that is not kept. */
  ASK,

  /** Bring in logs and samples. */
  APPEND,

  /** Read the audit. */
  AUDIT;

  /** As stored and as the last part of its message key. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Set<Scope> ofText(String text) {
    Set<Scope> scopes = EnumSet.noneOf(Scope.class);
    Arrays.stream(values())
        .filter(scope -> Arrays.asList(text.split(",", -1)).contains(scope.key()))
        .forEach(scopes::add);
    return scopes;
  }

  static String text(Set<Scope> scopes) {
    return Arrays.stream(values())
        .filter(scopes::contains)
        .map(Scope::key)
        .collect(Collectors.joining(","));
  }
}
