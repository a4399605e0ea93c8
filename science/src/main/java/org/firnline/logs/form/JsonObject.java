package org.firnline.logs.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Reads one flat or nested JSON object into names and texts: nested names are joined by points,
 * null becomes an empty text. Strict enough for logs; anything it does not understand is no object.
 */
final class JsonObject {
  private static final int DEEPEST = 8;

  private final String text;
  private int at;

  private JsonObject(String text) {
    this.text = text;
  }

  /** The members of an object; empty if the text is none. */
  static Optional<Map<String, String>> read(String text) {
    JsonObject reader = new JsonObject(text);
    Map<String, String> members = new LinkedHashMap<>();
    reader.blanks();
    boolean sound = reader.object("", members, 0);
    reader.blanks();
    return sound && reader.at == text.length() ? Optional.of(members) : Optional.empty();
  }

  private boolean object(String prefix, Map<String, String> members, int depth) {
    if (depth > DEEPEST || !take('{')) {
      return false;
    }
    blanks();
    if (take('}')) {
      return true;
    }
    while (true) {
      blanks();
      Optional<String> name = string();
      blanks();
      if (name.isEmpty() || !take(':')) {
        return false;
      }
      blanks();
      if (!value(prefix + name.get(), members, depth)) {
        return false;
      }
      blanks();
      if (take('}')) {
        return true;
      }
      if (!take(',')) {
        return false;
      }
    }
  }

  private boolean value(String name, Map<String, String> members, int depth) {
    char next = at < text.length() ? text.charAt(at) : 0;
    if (next == '{') {
      return object(name + ".", members, depth + 1);
    }
    if (next == '[') {
      return array(name, members, depth);
    }
    Optional<String> found = next == '"' ? string() : word();
    found.ifPresent(value -> members.put(name, value));
    return found.isPresent();
  }

  private boolean array(String name, Map<String, String> members, int depth) {
    take('[');
    blanks();
    for (int i = 0; !take(']'); i++) {
      blanks();
      if (i > 0 && !take(',')) {
        return false;
      }
      blanks();
      if (depth > DEEPEST || !value(name + "." + (i + 1), members, depth + 1)) {
        return false;
      }
      blanks();
    }
    return true;
  }

  private Optional<String> word() {
    int start = at;
    while (at < text.length() && ",}] \t".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    String word = text.substring(start, at);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(word.equals("null") ? "" : word);
  }

  private Optional<String> string() {
    if (!take('"')) {
      return Optional.empty();
    }
    StringBuilder out = new StringBuilder();
    while (at < text.length()) {
      char c = text.charAt(at++);
      if (c == '"') {
        return Optional.of(out.toString());
      }
      if (c == '\\' && at < text.length()) {
        out.append(escaped(text.charAt(at++)));
      } else {
        out.append(c);
      }
    }
    return Optional.empty();
  }

  private String escaped(char sign) {
    if (sign == 'u' && at + 4 <= text.length()) {
      String digits = text.substring(at, at + 4);
      if (digits.matches("[0-9a-fA-F]{4}")) {
        at += 4;
        return String.valueOf((char) Integer.parseInt(digits, 16));
      }
    }
    return switch (sign) {
      case 'n', 'r', 't', 'b', 'f' -> " ";
      default -> String.valueOf(sign);
    };
  }

  private boolean take(char sign) {
    if (at < text.length() && text.charAt(at) == sign) {
      at++;
      return true;
    }
    return false;
  }

  private void blanks() {
    while (at < text.length() && text.charAt(at) <= ' ') {
      at++;
    }
  }
}
