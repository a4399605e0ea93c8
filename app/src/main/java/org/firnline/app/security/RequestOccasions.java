package org.firnline.app.security;

import jakarta.servlet.http.HttpServletRequest;
import org.firnline.app.store.audit.Occasion;
import org.firnline.app.store.audit.Occasions;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Who acts: the person signed in, with the reason that the request carries. */
@Component
class RequestOccasions implements Occasions {
  private static final String REASON_HEADER = "Firnline-Why";
  private static final String API = "/api/";

  @Override
  public Occasion now() {
    if (!(RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes held)) {
      return Occasion.program("");
    }
    HttpServletRequest request = held.getRequest();
    boolean api = request.getRequestURI().startsWith(API);
    return new Occasion(person(), api ? "api" : "page", reason(request));
  }

  private static String person() {
    @Nullable Authentication who = SecurityContextHolder.getContext().getAuthentication();
    return who == null || !who.isAuthenticated() ? Single.PERSON : who.getName();
  }

  private static String reason(HttpServletRequest request) {
    @Nullable String header = request.getHeader(REASON_HEADER);
    @Nullable String typed = request.getParameter(Reason.FIELD);
    return typed != null ? typed : header != null ? header : "";
  }
}
