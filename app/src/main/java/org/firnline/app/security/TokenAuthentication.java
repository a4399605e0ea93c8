package org.firnline.app.security;

import java.util.List;
import org.firnline.app.store.people.ApiToken;
import org.springframework.security.authentication.AbstractAuthenticationToken;

/** A device or script that showed its key. */
final class TokenAuthentication extends AbstractAuthenticationToken {
  private static final long serialVersionUID = 1L;

  private final transient ApiToken token;

  TokenAuthentication(ApiToken token) {
    super(List.of());
    this.token = token;
    setAuthenticated(true);
  }

  ApiToken token() {
    return token;
  }

  @Override
  public Object getCredentials() {
    return "";
  }

  @Override
  public Object getPrincipal() {
    return "key " + token.id() + " " + token.name();
  }
}
