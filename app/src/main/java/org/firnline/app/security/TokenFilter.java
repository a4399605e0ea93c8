package org.firnline.app.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.firnline.app.store.people.ApiToken;
import org.firnline.app.store.people.ApiTokens;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Reads the key of a device or script; a wrong one is refused, whoever else is signed in. */
class TokenFilter extends OncePerRequestFilter {
  private static final String BEARER = "Bearer ";

  private final ApiTokens tokens;

  TokenFilter(ApiTokens tokens) {
    this.tokens = tokens;
  }

  /** Whether a request shows a key. */
  static boolean showsKey(HttpServletRequest request) {
    @Nullable String header = request.getHeader("Authorization");
    return header != null && header.startsWith(BEARER);
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    if (!showsKey(request)) {
      chain.doFilter(request, response);
      return;
    }
    String secret = request.getHeader("Authorization").substring(BEARER.length()).strip();
    Optional<ApiToken> token = tokens.find(secret);
    if (token.isEmpty()) {
      Problems.send(
          response,
          HttpServletResponse.SC_UNAUTHORIZED,
          "The key opens nothing",
          "It is unknown, has ended or was taken back.");
      return;
    }
    SecurityContext context = SecurityContextHolder.createEmptyContext();
    context.setAuthentication(new TokenAuthentication(token.get()));
    SecurityContextHolder.setContext(context);
    chain.doFilter(request, response);
  }
}
