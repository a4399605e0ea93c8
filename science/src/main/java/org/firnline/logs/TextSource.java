package org.firnline.logs;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.text.ByteSource;
import org.firnline.logs.text.EncodingVerdict;

/**
 * Lines of text that hold a table.
 *
 * @param fileName name of the file they come from
 * @param form kind of file: "delimited", "sheet", "long" ...
 * @param bytes the text
 * @param encoding its character set if it is known; else it is found out
 * @param preamble lines that stood before the table in the file it was rewritten from
 * @param firstNumber number of the first line
 * @param startLine number of the first line that counts
 */
record TextSource(
    String fileName,
    String form,
    ByteSource bytes,
    Optional<EncodingVerdict> encoding,
    List<SampleLine> preamble,
    long firstNumber,
    long startLine) {
  static final String DELIMITED = "delimited";
  static final String LONG = "long";
  static final String SHEET = "sheet";

  TextSource {
    Objects.requireNonNull(fileName, "fileName");
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(bytes, "bytes");
    Objects.requireNonNull(encoding, "encoding");
    preamble = List.copyOf(preamble);
  }

  /** A text file as it is. */
  static TextSource plain(String fileName, ByteSource bytes) {
    return new TextSource(fileName, DELIMITED, bytes, Optional.empty(), List.of(), 1, 1);
  }

  /** Cells that were made into tab-separated UTF-8 lines with decimal points. */
  static TextSource rewritten(
      String fileName, String form, ByteSource bytes, List<SampleLine> preamble, long firstNumber) {
    EncodingVerdict ours =
        new EncodingVerdict(StandardCharsets.UTF_8, 0, "made of cells", Confidence.HIGH);
    return new TextSource(
        fileName, form, bytes, Optional.of(ours), preamble, firstNumber, firstNumber);
  }

  /** The same text from a later line on. */
  TextSource from(long line, EncodingVerdict found) {
    return new TextSource(fileName, form, bytes, Optional.of(found), List.of(), firstNumber, line);
  }

  /** Whether its delimiter and character set are the file's own, not made by a rewriting. */
  boolean isOwn() {
    return form.equals(DELIMITED);
  }

  /** Whether it is made of a sheet's rows, which end with their last filled cell. */
  boolean isSheet() {
    return form.equals(SHEET);
  }
}
