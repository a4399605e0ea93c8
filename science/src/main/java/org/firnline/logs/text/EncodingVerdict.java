package org.firnline.logs.text;

import java.nio.charset.Charset;
import java.util.Objects;
import org.firnline.logs.channel.Confidence;

/**
 * Which character set a file is in.
 *
 * @param charset the character set
 * @param markLength bytes of the byte order mark to skip, 0 to 3
 * @param reason why, in words
 * @param confidence how sure
 */
public record EncodingVerdict(
    Charset charset, int markLength, String reason, Confidence confidence) {
  public EncodingVerdict {
    Objects.requireNonNull(charset, "charset");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(confidence, "confidence");
  }
}
