package org.firnline.app.security;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Optional;
import java.util.OptionalLong;
import org.firnline.app.store.KeptSettings;
import org.firnline.app.store.people.Invitations;
import org.firnline.app.store.people.People;
import org.firnline.app.store.people.Role;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/**
 * Whether this laboratory is shared: then everybody signs in. Once shared it stays shared, so that
 * no later start opens it by mistake.
 */
@Service
public class Sharing {
  private static final String SETTING = "sharing";
  private static final String ON = "on";

  private final KeptSettings settings;
  private final People people;
  private final Invitations invitations;

  Sharing(
      KeptSettings settings,
      People people,
      Invitations invitations,
      @Value("${firnline.share:false}") boolean share,
      @Value("${server.address:127.0.0.1}") String address)
      throws UnknownHostException {
    this.settings = settings;
    this.people = people;
    this.invitations = invitations;
    if (share && !isOn()) {
      settings.put(SETTING, ON);
    }
    if (!isOn() && !InetAddress.getByName(address).isLoopbackAddress()) {
      throw new IllegalStateException(
          "the address " + address + " can be reached from elsewhere; share the laboratory first");
    }
  }

  /** Whether people sign in. */
  public boolean isOn() {
    return settings.find(SETTING).filter(ON::equals).isPresent();
  }

  /** The secret of a new setup link, as long as nobody can look after passwords. */
  public Optional<String> setupSecret() {
    if (!isOn() || hasAdministrator()) {
      return Optional.empty();
    }
    return Optional.of(invitations.make(OptionalLong.empty()));
  }

  private boolean hasAdministrator() {
    return people.list().stream()
        .anyMatch(
            person ->
                person.active()
                    && !person.password().isEmpty()
                    && person.roles().contains(Role.ADMINISTRATOR));
  }
}
