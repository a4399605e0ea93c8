package org.firnline.app.settings;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.firnline.app.store.audit.Action;
import org.firnline.app.store.audit.AuditEntry;
import org.firnline.app.store.audit.AuditQuestion;
import org.firnline.app.store.audit.AuditTrail;
import org.firnline.app.store.audit.Changes;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.method.annotation.StreamingResponseBody;

/** The audit: searched, paged, exported. Nothing here can change it. */
@Controller
class AuditPage {
  private static final int AT_ONCE = 100;
  private static final int EXPORTED_AT_ONCE = 1_000;

  private final AuditTrail audit;
  private final Changes changes;
  private final AuditRows rows;

  AuditPage(AuditTrail audit, Changes changes, AuditRows rows) {
    this.audit = audit;
    this.changes = changes;
    this.rows = rows;
  }

  /** What is searched for, as the form sends it. */
  record Search(
      String person,
      String action,
      String subject,
      String key,
      String from,
      String to,
      String text) {

    Search {
      person = blankIfMissing(person);
      action = blankIfMissing(action);
      subject = blankIfMissing(subject);
      key = blankIfMissing(key);
      from = blankIfMissing(from);
      to = blankIfMissing(to);
      text = blankIfMissing(text);
    }

    private static String blankIfMissing(@org.jspecify.annotations.Nullable String typed) {
      return typed == null ? "" : typed.strip();
    }

    AuditQuestion below(long number) {
      return new AuditQuestion(person, action, subject, key, from, to, text, number);
    }
  }

  @GetMapping("/settings/audit")
  String search(
      @ModelAttribute("search") Search search,
      @RequestParam(defaultValue = "9223372036854775807") long below,
      Model model) {
    List<AuditEntry> found = audit.find(search.below(below), AT_ONCE);
    model.addAttribute("rows", found.stream().map(rows::of).toList());
    model.addAttribute("persons", audit.persons());
    model.addAttribute("subjects", audit.subjects());
    model.addAttribute("actions", Action.values());
    model.addAttribute("head", audit.head());
    if (found.size() == AT_ONCE) {
      model.addAttribute("older", found.get(found.size() - 1).number());
    }
    return "settings/audit";
  }

  /** All that was searched for, newest first; the export is itself an entry. */
  @GetMapping("/settings/audit.csv")
  ResponseEntity<StreamingResponseBody> export(@ModelAttribute("search") Search search) {
    changes.note(Action.EXPORT, "export", "audit.csv", Map.of("search", search.toString()));
    StreamingResponseBody body =
        out -> {
          try (Writer csv = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            write(search, csv);
          }
        };
    return ResponseEntity.ok()
        .header(HttpHeaders.CONTENT_TYPE, "text/csv;charset=UTF-8")
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"audit.csv\"")
        .body(body);
  }

  private void write(Search search, Writer csv) throws IOException {
    csv.write(AuditCsv.HEADER);
    long below = Long.MAX_VALUE;
    List<AuditEntry> some = audit.find(search.below(below), EXPORTED_AT_ONCE);
    while (!some.isEmpty()) {
      for (AuditEntry entry : some) {
        csv.write(AuditCsv.line(entry));
      }
      below = some.get(some.size() - 1).number();
      some = audit.find(search.below(below), EXPORTED_AT_ONCE);
    }
  }
}
