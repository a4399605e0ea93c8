package org.firnline.app.cli;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON as printed for programs and readable by people. */
final class JsonText {
  private JsonText() {}

  static String of(JsonNode json) {
    return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(json);
  }
}
