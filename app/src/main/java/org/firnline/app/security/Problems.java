package org.firnline.app.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Refusals to programs, in the form of RFC 9457. Texts are fixed and hold no quotes. */
final class Problems {
  private Problems() {}

  static boolean isWanted(HttpServletRequest request) {
    return request.getRequestURI().startsWith("/api/");
  }

  static void send(HttpServletResponse response, int status, String title, String detail)
      throws IOException {
    response.setStatus(status);
    response.setContentType("application/problem+json");
    response.setCharacterEncoding(StandardCharsets.UTF_8.name());
    if (status == HttpServletResponse.SC_UNAUTHORIZED) {
      response.setHeader("WWW-Authenticate", "Bearer");
    }
    response
        .getWriter()
        .write(
            "{\"type\":\"about:blank\",\"title\":\""
                + title
                + "\",\"status\":"
                + status
                + ",\"detail\":\""
                + detail
                + "\"}");
  }
}
