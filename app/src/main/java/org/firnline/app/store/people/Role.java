package org.firnline.app.store.people;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a person may do. A person may have several; none includes another, so that whoever looks
 * after accounts has no say over records (requirement R-SYS-02).
 */
public enum Role {
  /** Sees everything, changes nothing. */
  VIEWER,

  /** Plans, brings in logs, changes runs and the library. */
  OPERATOR,

  /** Reviews and signs. */
  REVIEWER,

  /** People, settings, backups; no records. */
  ADMINISTRATOR;

  /** As stored and as the last part of its message key. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Set<Role> ofText(String text) {
    Set<Role> roles = EnumSet.noneOf(Role.class);
    Arrays.stream(values())
        .filter(role -> Arrays.asList(text.split(",", -1)).contains(role.key()))
        .forEach(roles::add);
    return roles;
  }

  static String text(Set<Role> roles) {
    return Arrays.stream(values())
        .filter(roles::contains)
        .map(Role::key)
        .collect(Collectors.joining(","));
  }
}
