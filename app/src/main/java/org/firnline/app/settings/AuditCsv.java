package org.firnline.app.settings;

import java.util.List;
import java.util.stream.Collectors;
import org.firnline.app.store.audit.AuditEntry;

/** The audit as CSV; a text that a spreadsheet would take for a formula is made harmless. */
final class AuditCsv {
  static final String HEADER =
      "number,at_utc,zone,person,via,action,subject,key,old,new,why,previous,hash\r\n";

  private AuditCsv() {}

  static String line(AuditEntry entry) {
    return List.of(
                Long.toString(entry.number()),
                entry.at().toString(),
                entry.zone(),
                entry.occasion().person(),
                entry.occasion().via(),
                entry.action(),
                entry.subject(),
                entry.subjectKey(),
                entry.oldValues(),
                entry.newValues(),
                entry.occasion().why(),
                entry.previous(),
                entry.hash())
            .stream()
            .map(AuditCsv::cell)
            .collect(Collectors.joining(","))
        + "\r\n";
  }

  private static String cell(String text) {
    boolean formula = !text.isEmpty() && "=+-@\t".indexOf(text.charAt(0)) >= 0;
    return "\"" + (formula ? "'" : "") + text.replace("\"", "\"\"") + "\"";
  }
}
