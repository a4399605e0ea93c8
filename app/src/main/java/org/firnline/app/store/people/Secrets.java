package org.firnline.app.store.people;

import java.security.SecureRandom;
import java.util.Base64;
import org.firnline.app.store.audit.Digest;

/** Random secrets of 256 bits; what is kept of them is their SHA-256. */
final class Secrets {
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 32;

  private Secrets() {}

  static String fresh() {
    byte[] secret = new byte[BYTES];
    RANDOM.nextBytes(secret);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
  }

  /** Needs no salt and no slowness: nobody guesses 256 random bits. */
  static String hash(String secret) {
    return new Digest().add(secret).hex();
  }
}
