package org.firnline.app.security;

import java.util.Collections;
import java.util.Set;
import java.util.function.Supplier;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Person;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import org.springframework.stereotype.Component;

/**
 * Holds each request against {@link Rights}. Roles are read afresh every time, so that a closed
 * account or a role that was taken away ends at once, whatever session is open.
 */
@Component
class RightsCheck implements AuthorizationManager<RequestAuthorizationContext> {
  private final Sharing sharing;
  private final People people;

  RightsCheck(Sharing sharing, People people) {
    this.sharing = sharing;
    this.people = people;
  }

  @Override
  public AuthorizationDecision authorize(
      Supplier<? extends @Nullable Authentication> who, RequestAuthorizationContext request) {
    String method = request.getRequest().getMethod();
    String path = request.getRequest().getRequestURI();
    return new AuthorizationDecision(Rights.isOpen(path) || isAllowed(who.get(), method, path));
  }

  private boolean isAllowed(@Nullable Authentication who, String method, String path) {
    if (who instanceof TokenAuthentication token) {
      Set<?> scopes = Rights.scopes(method, path);
      return !Collections.disjoint(token.token().scopes(), scopes);
    }
    if (!sharing.isOn()) {
      return true;
    }
    if (who == null || who instanceof AnonymousAuthenticationToken) {
      return false;
    }
    return people
        .find(who.getName())
        .filter(Person::active)
        .filter(person -> !Collections.disjoint(person.roles(), Rights.roles(method, path)))
        .isPresent();
  }
}
