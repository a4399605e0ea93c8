package org.firnline.app.store.audit;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * SHA-256 over a list of fields. Each field is preceded by its length, so that no two different
 * lists run together into the same bytes.
 */
public final class Digest {
  private final MessageDigest sha256;

  /** Starts with no field. */
  public Digest() {
    try {
      sha256 = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Adds a text as UTF-8. */
  public Digest add(String field) {
    return add(field.getBytes(StandardCharsets.UTF_8));
  }

  /** Adds bytes. */
  public Digest add(byte[] field) {
    sha256.update(ByteBuffer.allocate(Integer.BYTES).putInt(field.length).flip());
    sha256.update(field);
    return this;
  }

  /** The digest, 64 lower-case hexadecimal digits; starts again with no field. */
  public String hex() {
    return HexFormat.of().formatHex(sha256.digest());
  }
}
