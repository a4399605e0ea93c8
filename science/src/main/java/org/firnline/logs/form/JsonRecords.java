package org.firnline.logs.form;

import java.io.IOException;
import java.util.Optional;
import org.firnline.logs.text.Lines;

/**
 * The JSON objects of a file one after the other: one a line, or spread over lines inside an array,
 * which may itself be a member of an outer object.
 */
final class JsonRecords implements AutoCloseable {
  private static final int LONGEST = 1 << 20;

  /**
   * One object, or a piece of text where one should be.
   *
   * @param line the line it starts in, from 1
   * @param text its text
   */
  record Found(long line, String text) {}

  private final Lines lines;
  private final boolean perLine;
  private String text = "";
  private int at;
  private boolean ended;
  private boolean descended;

  /**
   * Records of a file.
   *
   * @param perLine whether each line holds one object
   */
  JsonRecords(Lines lines, boolean perLine) {
    this.lines = lines;
    this.perLine = perLine;
  }

  /** The next record; empty at the end of the file. */
  Optional<Found> next() throws IOException {
    return perLine ? nextLine() : nextObject();
  }

  private Optional<Found> nextLine() throws IOException {
    while (lines.advance()) {
      String bare = bare(lines.text());
      if (!bare.isEmpty()) {
        return Optional.of(new Found(lines.number(), bare));
      }
    }
    return Optional.empty();
  }

  /** Lines of an array of objects carry brackets and commas around the objects. */
  static String bare(String text) {
    String bare = text.replace("\0", "").strip().replaceFirst("^\uFEFF", "");
    bare = bare.startsWith("[") ? bare.substring(1).strip() : bare;
    while (bare.endsWith(",") || (bare.endsWith("]") && !bare.startsWith("["))) {
      bare = bare.substring(0, bare.length() - 1).strip();
    }
    return bare;
  }

  private Optional<Found> nextObject() throws IOException {
    if (!descended) {
      descended = true;
      descend();
    }
    if (!seek('{')) {
      return Optional.empty();
    }
    return Optional.of(new Found(lines.number(), balanced()));
  }

  /** Passes over what stands before the objects: an array's bracket, an outer object's members. */
  private void descend() throws IOException {
    while (seek('[')) {
      at++;
      while (more() && text.charAt(at) <= ' ') {
        at++;
      }
      if (more() && text.charAt(at) == '{') {
        return;
      }
    }
  }

  private boolean seek(char sign) throws IOException {
    while (more()) {
      char c = text.charAt(at);
      if (c == sign) {
        return true;
      }
      if (c == '"') {
        passString(new StringBuilder());
      } else {
        at++;
      }
    }
    return false;
  }

  private String balanced() throws IOException {
    StringBuilder object = new StringBuilder();
    int depth = 0;
    while (more() && object.length() < LONGEST) {
      char c = text.charAt(at);
      if (c == '"') {
        passString(object);
        continue;
      }
      object.append(c < ' ' ? ' ' : c);
      at++;
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
      if (depth == 0) {
        break;
      }
    }
    return object.toString();
  }

  private void passString(StringBuilder to) throws IOException {
    to.append('"');
    at++;
    while (more() && to.length() < LONGEST) {
      char c = text.charAt(at++);
      to.append(c);
      if (c == '\\' && more()) {
        to.append(text.charAt(at++));
      } else if (c == '"') {
        return;
      }
    }
  }

  /** Whether there is a sign at the place reached; fetches lines as needed. */
  private boolean more() throws IOException {
    while (at >= text.length() && !ended) {
      ended = !lines.advance();
      text = ended ? "" : lines.text() + " ";
      at = 0;
    }
    return at < text.length();
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
