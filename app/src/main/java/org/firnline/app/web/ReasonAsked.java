package org.firnline.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.Map;
import org.firnline.app.store.audit.ReasonMissing;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** Asks for the reason of a change and sends the same form again with it. */
@ControllerAdvice
class ReasonAsked {
  private static final String REASON = "why";
  private static final String FORGERY_TOKEN = "_csrf";

  private final EveryPage everyPage;

  ReasonAsked(EveryPage everyPage) {
    this.everyPage = everyPage;
  }

  @ExceptionHandler(ReasonMissing.class)
  ModelAndView ask(HttpServletRequest request) {
    Map<String, String[]> sent = new LinkedHashMap<>(request.getParameterMap());
    sent.remove(REASON);
    sent.remove(FORGERY_TOKEN);
    ModelAndView page = new ModelAndView("settings/reason");
    page.addObject("place", everyPage.place());
    page.addObject("address", request.getRequestURI());
    page.addObject("sent", sent);
    page.setStatus(HttpStatus.UNPROCESSABLE_CONTENT);
    return page;
  }
}
