package org.firnline.app.security;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Time-based one-time codes of six digits. Source: RFC 6238 (time steps of 30 s, HMAC-SHA-1), RFC
 * 4226 section 5.3 (truncation), RFC 4648 section 6 (Base32). One step before and after the present
 * one is taken, for clocks that differ.
 */
public final class OneTimeCodes {
  private static final String ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int SECRET_BYTES = 20;
  private static final int STEP_S = 30;
  private static final int DRIFT_STEPS = 1;
  private static final int[] POWERS = {
    1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000
  };

  private OneTimeCodes() {}

  /** A new secret, Base32. */
  public static String freshSecret() {
    byte[] secret = new byte[SECRET_BYTES];
    RANDOM.nextBytes(secret);
    return base32(secret);
  }

  /**
   * The time step whose code this is, near a moment.
   *
   * @param secret Base32
   * @param code as typed; blanks do not matter
   * @return empty if it is no code of that time
   */
  public static OptionalLong step(String secret, String code, Instant now) {
    String typed = code.replace(" ", "");
    long present = now.getEpochSecond() / STEP_S;
    OptionalLong found = OptionalLong.empty();
    for (long step = present - DRIFT_STEPS; step <= present + DRIFT_STEPS; step++) {
      String right = code(fromBase32(secret), step, 6);
      if (MessageDigest.isEqual(
          right.getBytes(StandardCharsets.US_ASCII), typed.getBytes(StandardCharsets.UTF_8))) {
        found = OptionalLong.of(step);
      }
    }
    return found;
  }

  /** What a program that makes codes reads. */
  public static String address(String secret, String login) {
    return "otpauth://totp/Firnline:" + login + "?secret=" + secret + "&issuer=Firnline";
  }

  static String code(byte[] secret, long step, int digits) {
    try {
      Mac mac = Mac.getInstance("HmacSHA1");
      mac.init(new SecretKeySpec(secret, "RAW"));
      byte[] hash = mac.doFinal(ByteBuffer.allocate(Long.BYTES).putLong(step).array());
      int offset = hash[hash.length - 1] & 0xf;
      int number = ByteBuffer.wrap(hash).getInt(offset) & 0x7fffffff;
      String plain = Integer.toString(number % POWERS[digits]);
      return "0".repeat(digits - plain.length()) + plain;
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java platform has HmacSHA1", e);
    }
  }

  static String base32(byte[] bytes) {
    StringBuilder text = new StringBuilder();
    long held = 0;
    int bits = 0;
    for (byte next : bytes) {
      held = (held << Byte.SIZE) | (next & 0xff);
      bits += Byte.SIZE;
      while (bits >= 5) {
        bits -= 5;
        text.append(ALPHABET.charAt((int) ((held >> bits) & 31)));
      }
    }
    if (bits > 0) {
      text.append(ALPHABET.charAt((int) ((held << (5 - bits)) & 31)));
    }
    return text.toString();
  }

  static byte[] fromBase32(String text) {
    ByteBuffer bytes = ByteBuffer.allocate(text.length() * 5 / Byte.SIZE);
    long held = 0;
    int bits = 0;
    for (char letter : text.toUpperCase(Locale.ROOT).toCharArray()) {
      int value = ALPHABET.indexOf(letter);
      if (value < 0) {
        throw new IllegalArgumentException("not Base32: " + letter);
      }
      held = (held << 5) | value;
      bits += 5;
      if (bits >= Byte.SIZE) {
        bits -= Byte.SIZE;
        bytes.put((byte) (held >> bits));
      }
    }
    return bytes.array();
  }
}
