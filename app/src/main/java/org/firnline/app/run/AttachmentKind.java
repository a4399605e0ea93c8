package org.firnline.app.run;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What may be put with a run, told by its first bytes and never by its name alone. Kinds that a
 * browser would run (pages, drawings with scripts) are not among them.
 */
enum AttachmentKind {
  JPEG("image/jpeg", true),
  PNG("image/png", true),
  GIF("image/gif", true),
  WEBP("image/webp", false),
  /** Photos as some phones keep them; kept, but not shown. */
  HEIC("image/heic", false),
  PDF("application/pdf", false),
  /** Workbooks and text documents, which are zip files of a known ending. */
  OFFICE("application/octet-stream", false),
  TEXT("text/plain", false);

  /** How many first bytes are looked at. */
  static final int HEAD = 4_096;

  private static final byte[] ZIP = {'P', 'K', 3, 4};

  private final String mediaType;
  private final boolean picture;

  AttachmentKind(String mediaType, boolean picture) {
    this.mediaType = mediaType;
    this.picture = picture;
  }

  /** The type a browser is told. */
  String mediaType() {
    return mediaType;
  }

  /** Whether a small picture can be made of it. */
  boolean isPicture() {
    return picture;
  }

  /** The kind with this name. */
  static Optional<AttachmentKind> named(String name) {
    return Arrays.stream(values()).filter(kind -> kind.name().equals(name)).findFirst();
  }

  /**
   * What a file is; empty for what is not taken.
   *
   * @param head its first bytes, at most {@link #HEAD}
   * @param name its file name
   */
  static Optional<AttachmentKind> of(byte[] head, String name) {
    if (starts(head, 0, (byte) 0xff, (byte) 0xd8, (byte) 0xff)) {
      return Optional.of(JPEG);
    }
    if (starts(head, 0, (byte) 0x89, (byte) 'P', (byte) 'N', (byte) 'G')) {
      return Optional.of(PNG);
    }
    if (starts(head, 0, ascii("GIF8"))) {
      return Optional.of(GIF);
    }
    if (starts(head, 0, ascii("RIFF")) && starts(head, 8, ascii("WEBP"))) {
      return Optional.of(WEBP);
    }
    if (starts(head, 4, ascii("ftyphei")) || starts(head, 4, ascii("ftypmif1"))) {
      return Optional.of(HEIC);
    }
    if (starts(head, 0, ascii("%PDF-"))) {
      return Optional.of(PDF);
    }
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (starts(head, 0, ZIP)) {
      return switch (ending) {
        case "xlsx", "ods", "docx", "odt" -> Optional.of(OFFICE);
        default -> Optional.empty();
      };
    }
    return switch (ending) {
      case "txt", "csv", "tsv", "json", "md" -> isText(head) ? Optional.of(TEXT) : Optional.empty();
      default -> Optional.empty();
    };
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static boolean starts(byte[] head, int at, byte... wanted) {
    return head.length >= at + wanted.length
        && Arrays.equals(head, at, at + wanted.length, wanted, 0, wanted.length);
  }

  /** Text of any encoding that has no zero byte; served as text, it can do nothing. */
  private static boolean isText(byte[] head) {
    for (byte b : head) {
      if (b == 0) {
        return false;
      }
    }
    return true;
  }
}
