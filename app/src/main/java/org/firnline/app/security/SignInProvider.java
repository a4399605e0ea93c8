package org.firnline.app.security;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.firnline.app.store.people.Person;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;

/** Lets a person in whose login, password and one-time code are right. */
class SignInProvider implements AuthenticationProvider {
  private static final String CODE = "code";

  private final Passwords passwords;

  SignInProvider(Passwords passwords) {
    this.passwords = passwords;
  }

  /** The one-time code that came with the form. */
  static String codeOf(HttpServletRequest request) {
    @Nullable String code = request.getParameter(CODE);
    return code == null ? "" : code;
  }

  @Override
  public Authentication authenticate(Authentication typed) {
    String code = typed.getDetails() instanceof String given ? given : "";
    Person person =
        passwords
            .signIn(typed.getName(), String.valueOf(typed.getCredentials()), code)
            .orElseThrow(() -> new BadCredentialsException("not let in"));
    return UsernamePasswordAuthenticationToken.authenticated(person.login(), "", List.of());
  }

  @Override
  public boolean supports(Class<?> kind) {
    return UsernamePasswordAuthenticationToken.class.isAssignableFrom(kind);
  }
}
