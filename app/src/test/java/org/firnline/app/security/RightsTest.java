package org.firnline.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.firnline.app.store.people.Role;
import org.firnline.app.store.people.Scope;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RightsTest {
  @ParameterizedTest
  @CsvSource({
    "GET, /, 'VIEWER OPERATOR REVIEWER ADMINISTRATOR'",
    "GET, /runs/7, 'VIEWER OPERATOR REVIEWER ADMINISTRATOR'",
    "GET, /settings/audit, 'VIEWER OPERATOR REVIEWER ADMINISTRATOR'",
    "POST, /runs, OPERATOR",
    "POST, /plan, OPERATOR",
    "DELETE, /anything/new, OPERATOR",
    "POST, /records/7/sign, 'OPERATOR REVIEWER'",
    "POST, /settings/profile, ADMINISTRATOR",
    "GET, /settings/people, ADMINISTRATOR",
    "POST, /settings/people/7/roles, ADMINISTRATOR",
    "GET, /settings/tokens, ADMINISTRATOR",
    "POST, /settings/backup/now, ADMINISTRATOR",
    "POST, /settings/me/password, 'VIEWER OPERATOR REVIEWER ADMINISTRATOR'",
    "POST, /sign-out, 'VIEWER OPERATOR REVIEWER ADMINISTRATOR'",
    "POST, /api/v1/reviews, 'VIEWER OPERATOR REVIEWER ADMINISTRATOR'"
  })
  void r_sys_02_each_role_may_do_its_own_and_no_more(String method, String path, String may) {
    Set<Role> roles = Arrays.stream(may.split(" ")).map(Role::valueOf).collect(Collectors.toSet());
    assertThat(Rights.roles(method, path)).isEqualTo(roles);
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /api/v1/runs, READ",
    "POST, /api/v1/plan, ASK",
    "POST, /api/v1/reviews, ASK",
    "POST, /api/v1/runs, APPEND",
    "GET, /api/v1/audit, AUDIT"
  })
  void r_sys_02_a_key_opens_what_it_was_made_for(String method, String path, Scope scope) {
    assertThat(Rights.scopes(method, path)).isEqualTo(EnumSet.of(scope));
    assertThat(Rights.scopes(method, path.replace("/api/v1", ""))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "/sign-in, true",
    "/style/firnline.css, true",
    "/invitation/abc, true",
    "/, false",
    "/settings, false",
    "/api/v1/runs, false",
    "/sign-in/x, false"
  })
  void only_the_door_is_open(String path, boolean open) {
    assertThat(Rights.isOpen(path)).isEqualTo(open);
  }
}
