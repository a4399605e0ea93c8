package org.firnline.app.security;

import jakarta.servlet.http.HttpServletRequest;
import java.security.Principal;
import java.util.Optional;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Person;
import org.springframework.stereotype.Service;

/** Knows who is signed in. */
@Service
public class Signed {
  private final People people;
  private final Sharing sharing;

  Signed(People people, Sharing sharing) {
    this.people = people;
    this.sharing = sharing;
  }

  /** The person behind a request; empty while the laboratory is not shared. */
  public Optional<Person> in(HttpServletRequest request) {
    return Optional.ofNullable(request.getUserPrincipal())
        .filter(who -> sharing.isOn())
        .map(Principal::getName)
        .flatMap(people::find);
  }
}
