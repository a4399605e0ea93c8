package org.firnline.app.store.keeping;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a backup holds.
 *
 * @param made when
 * @param auditEntries length of the audit
 * @param auditHash hash of its last entry
 * @param tables each with its rows and hash
 * @param files each with its hash and size
 */
record Manifest(
    Instant made,
    long auditEntries,
    String auditHash,
    List<TableDigest> tables,
    List<StoredFile> files) {
  static final String NAME = "manifest.json";

  /**
   * A file of a backup.
   *
   * @param path in the data folder, with slashes
   * @param sha256 of its bytes
   * @param size_bytes length
   */
  record StoredFile(String path, String sha256, long size_bytes) {}

  String json() {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    all.put("form", "firnline-backup-1").put("made_utc", made.toString());
    all.put("auditEntries", auditEntries).put("auditHash", auditHash);
    ArrayNode tablesNode = all.putArray("tables");
    tables.forEach(
        t ->
            tablesNode
                .addObject()
                .put("table", t.table())
                .put("rows", t.rows())
                .put("hash", t.hash()));
    ArrayNode filesNode = all.putArray("files");
    files.forEach(
        f ->
            filesNode
                .addObject()
                .put("path", f.path())
                .put("sha256", f.sha256())
                .put("size_bytes", f.size_bytes()));
    return all.toPrettyString();
  }

  static Manifest ofJson(String json) {
    JsonNode all = JsonMapper.shared().readTree(json);
    if (!all.path("form").asString("").equals("firnline-backup-1")) {
      throw new IllegalArgumentException(
          "this is no backup of Firnline: its manifest says no form");
    }
    List<TableDigest> tables = new ArrayList<>();
    all.path("tables")
        .forEach(
            t ->
                tables.add(
                    new TableDigest(
                        t.path("table").asString(),
                        t.path("rows").asLong(),
                        t.path("hash").asString())));
    List<StoredFile> files = new ArrayList<>();
    all.path("files")
        .forEach(
            f ->
                files.add(
                    new StoredFile(
                        f.path("path").asString(),
                        f.path("sha256").asString(),
                        f.path("size_bytes").asLong())));
    return new Manifest(
        Instant.parse(all.path("made_utc").asString()),
        all.path("auditEntries").asLong(),
        all.path("auditHash").asString(),
        tables,
        files);
  }
}
