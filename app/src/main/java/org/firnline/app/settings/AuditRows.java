package org.firnline.app.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.firnline.app.store.audit.AuditEntry;
import org.firnline.app.words.Shown;
import org.springframework.stereotype.Component;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Entries of the audit as a page shows them. */
@Component
class AuditRows {
  private static final int LONGEST = 160;

  private final Shown shown;

  AuditRows(Shown shown) {
    this.shown = shown;
  }

  /**
   * A line of the page.
   *
   * @param number of the entry
   * @param at date and time here
   * @param person who
   * @param via how it came
   * @param action last part of a message key
   * @param subject what it was about
   * @param key which one
   * @param values each value that went and came
   * @param why the reason; blank where none was given
   * @param hash the first digits
   */
  record Row(
      long number,
      String at,
      String person,
      String via,
      String action,
      String subject,
      String key,
      List<Value> values,
      String why,
      String hash) {}

  /** A value that changed; blank where there was or is none. */
  record Value(String name, String old, String fresh) {}

  Row of(AuditEntry entry) {
    return new Row(
        entry.number(),
        shown.fullMoment(entry.at()),
        entry.occasion().person(),
        entry.occasion().via(),
        entry.action(),
        entry.subject(),
        entry.subjectKey(),
        values(entry),
        entry.occasion().why(),
        entry.hash().substring(0, 12));
  }

  private static List<Value> values(AuditEntry entry) {
    JsonNode old = JsonMapper.shared().readTree(entry.oldValues());
    JsonNode fresh = JsonMapper.shared().readTree(entry.newValues());
    Set<String> names = new TreeSet<>(old.propertyNames());
    names.addAll(fresh.propertyNames());
    List<Value> values = new ArrayList<>();
    names.forEach(name -> values.add(new Value(name, text(old, name), text(fresh, name))));
    return values;
  }

  private static String text(JsonNode values, String name) {
    String text = values.path(name).asString("");
    return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
  }
}
