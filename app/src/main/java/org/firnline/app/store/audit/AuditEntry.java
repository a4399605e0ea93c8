package org.firnline.app.store.audit;

import java.time.Instant;

/**
 * One line of the audit.
 *
 * @param number 1 for the first, without gaps
 * @param at when, by this machine's clock
 * @param zone the laboratory's time zone then
 * @param occasion who, how it came, and why
 * @param action what was done, see {@link Action#key()}
 * @param subject the table of the record, or the subject of an event without one
 * @param subjectKey the record's key there
 * @param oldValues JSON object of the values that went; {@code {}} where there were none
 * @param newValues JSON object of the values that came
 * @param previous hash of the entry before
 * @param hash SHA-256 over all of this, hexadecimal
 */
public record AuditEntry(
    long number,
    Instant at,
    String zone,
    Occasion occasion,
    String action,
    String subject,
    String subjectKey,
    String oldValues,
    String newValues,
    String previous,
    String hash) {

  /** What the hash of this entry must be. */
  public String computedHash() {
    return new Digest()
        .add(previous)
        .add(Long.toString(number))
        .add(at.toString())
        .add(zone)
        .add(occasion.person())
        .add(occasion.via())
        .add(occasion.why())
        .add(action)
        .add(subject)
        .add(subjectKey)
        .add(oldValues)
        .add(newValues)
        .hex();
  }

  AuditEntry sealed() {
    return new AuditEntry(
        number,
        at,
        zone,
        occasion,
        action,
        subject,
        subjectKey,
        oldValues,
        newValues,
        previous,
        computedHash());
  }
}
