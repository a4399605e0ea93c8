package org.firnline.app.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collection;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses requests that name any host but this machine and those it was told to answer for. A page
 * elsewhere can make its own name point at 127.0.0.1 (DNS rebinding) and would then share our
 * origin; its requests still carry its own name in the Host header.
 */
class LoopbackHostFilter extends OncePerRequestFilter {
  private static final Set<String> OWN_NAMES = Set.of("localhost", "127.0.0.1", "[::1]", "::1");

  private final Set<String> names = new HashSet<>(OWN_NAMES);

  LoopbackHostFilter(Collection<String> more) {
    more.forEach(name -> names.add(name.strip().toLowerCase(Locale.ROOT)));
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    String host = request.getServerName();
    if (host != null && names.contains(host.toLowerCase(Locale.ROOT))) {
      chain.doFilter(request, response);
      return;
    }
    response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
    response.setContentType("text/plain;charset=UTF-8");
    response.getWriter().write("Firnline answers only to localhost on this machine.\n");
  }
}
