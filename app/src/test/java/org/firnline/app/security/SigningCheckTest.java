package org.firnline.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import org.firnline.app.store.DataFolder;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Person;
import org.firnline.app.store.people.Role;
import org.firnline.app.web.WebApplication;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.mock.web.MockHttpSession;

class SigningCheckTest {
  private static final String GOOD = "heron walks slowly";

  @Test
  void r_sig_03_both_at_first_the_password_later_both_after_the_session_ended(
      @TempDir Path folder) {
    try (ConfigurableApplicationContext served = WebApplication.start(new DataFolder(folder), 0)) {
      People people = served.getBean(People.class);
      Passwords passwords = served.getBean(Passwords.class);
      SigningCheck check = served.getBean(SigningCheck.class);
      long id = people.add("rowan", "Rowan Marsh", EnumSet.of(Role.REVIEWER));
      passwords.choosePassword(people.find(id).orElseThrow(), GOOD);
      Person rowan = people.find(id).orElseThrow();
      MockHttpSession session = new MockHttpSession();
      assertThat(check.asksLogin(session, rowan)).isTrue();
      assertThat(check.confirm(session, rowan, "", GOOD)).isFalse();
      assertThat(check.confirm(session, rowan, "fern", GOOD)).isFalse();
      assertThat(check.confirm(session, rowan, "rowan", GOOD)).isTrue();
      assertThat(check.asksLogin(session, rowan)).isFalse();
      assertThat(check.confirm(session, rowan, "", "wrong")).isFalse();
      assertThat(check.confirm(session, rowan, "", GOOD)).isTrue();
      assertThat(check.asksLogin(new MockHttpSession(), rowan)).isTrue();
    }
  }
}
