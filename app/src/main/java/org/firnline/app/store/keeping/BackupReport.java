package org.firnline.app.store.keeping;

import java.nio.file.Path;

/**
 * A backup that was made, restored into a scratch folder and compared.
 *
 * @param file the backup
 * @param size_bytes its length
 * @param rows rows of all tables in it
 * @param files raw files in it
 * @param auditEntries length of the audit in it
 * @param auditHash hash of the last entry; kept elsewhere, it proves later that no entry is gone
 */
public record BackupReport(
    Path file, long size_bytes, long rows, long files, long auditEntries, String auditHash) {}
