package org.firnline.app.store;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Files put with runs, kept byte for byte like raw logs. They are withdrawn, never deleted. */
@Component
public class Attachments {
  private final BytesByHash bytes;
  private final AttachmentQueries queries;

  Attachments(BytesByHash bytes, AttachmentQueries queries) {
    this.bytes = bytes;
    this.queries = queries;
  }

  /**
   * What is said about a file that is put with a run.
   *
   * @param kind what its bytes are
   * @param originalName the name it came with, for people only
   * @param caption what it shows
   * @param author who adds it; empty where nobody signs in
   */
  public record About(String kind, String originalName, String caption, String author) {}

  /**
   * Keeps a file with a run.
   *
   * @param content read to its end, not closed
   * @return its number
   */
  public long keep(long runId, InputStream content, About about) throws IOException {
    return queries.add(runId, bytes.keep(content), about);
  }

  /** All attachments of a run, withdrawn ones too, in the order they came. */
  public List<KeptAttachment> list(long runId) {
    return queries.list(runId);
  }

  /** An attachment of a run. */
  public Optional<KeptAttachment> find(long runId, long id) {
    return list(runId).stream().filter(attachment -> attachment.id() == id).findFirst();
  }

  /** Withdraws an attachment of a run; one that is withdrawn already keeps its time. */
  public void withdraw(long runId, long id) {
    queries.withdraw(runId, id);
  }

  /** Opens the bytes of an attachment. */
  public InputStream open(KeptAttachment attachment) throws IOException {
    return bytes.open(attachment.content().sha256(), attachment.originalName());
  }
}
