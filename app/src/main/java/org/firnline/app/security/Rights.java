package org.firnline.app.security;

import java.util.EnumSet;
import java.util.Set;
import org.firnline.app.store.people.Role;
import org.firnline.app.store.people.Scope;

/**
 * Who may do what, by method and path. What is not named is for operators to change and for
 * everybody with an account to see: a new page is closed to others without further thought.
 */
final class Rights {
  private static final String API = "/api/";
  private static final Set<Role> EVERYBODY = EnumSet.allOf(Role.class);

  private Rights() {}

  /** Pages and files that are shown before anybody has signed in. */
  static boolean isOpen(String path) {
    return path.equals("/sign-in")
        || path.equals("/error")
        || path.startsWith("/invitation/")
        || path.startsWith("/style/")
        || path.startsWith("/script/")
        || path.startsWith("/image/")
        || path.startsWith("/webjars/");
  }

  /** Any of these roles may do it. */
  static Set<Role> roles(String method, String path) {
    if (path.startsWith("/settings/me") || path.equals("/sign-out")) {
      return EVERYBODY;
    }
    if (isForAdministrators(path)) {
      return EnumSet.of(Role.ADMINISTRATOR);
    }
    if (reads(method) || asksOnly(path)) {
      return EVERYBODY;
    }
    if (path.startsWith("/settings")) {
      return EnumSet.of(Role.ADMINISTRATOR);
    }
    if (path.startsWith("/records") || path.startsWith("/record")) {
      return EnumSet.of(Role.OPERATOR, Role.REVIEWER);
    }
    return EnumSet.of(Role.OPERATOR);
  }

  /** A key needs this scope; keys open nothing but the interface for programs. */
  static Set<Scope> scopes(String method, String path) {
    if (!path.startsWith(API)) {
      return EnumSet.noneOf(Scope.class);
    }
    if (path.startsWith("/api/v1/audit")) {
      return EnumSet.of(Scope.AUDIT);
    }
    if (asksOnly(path)) {
      return EnumSet.of(Scope.ASK);
    }
    return reads(method) ? EnumSet.of(Scope.READ) : EnumSet.of(Scope.APPEND);
  }

  private static boolean isForAdministrators(String path) {
    return path.startsWith("/settings/people")
        || path.startsWith("/settings/tokens")
        || path.startsWith("/settings/backup");
  }

  /** Answers that are worked out and not kept. */
  private static boolean asksOnly(String path) {
    return path.equals("/api/v1/plan") || path.equals("/api/v1/reviews");
  }

  private static boolean reads(String method) {
    return method.equals("GET") || method.equals("HEAD") || method.equals("OPTIONS");
  }
}
