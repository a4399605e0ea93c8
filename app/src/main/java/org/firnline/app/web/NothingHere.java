package org.firnline.app.web;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** What was asked for does not exist. */
@ResponseStatus(HttpStatus.NOT_FOUND)
public class NothingHere extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Answered with the page "nothing here". */
  public NothingHere() {
    super("nothing here");
  }
}
