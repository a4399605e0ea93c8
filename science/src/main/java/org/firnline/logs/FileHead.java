package org.firnline.logs;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.firnline.logs.channel.Confidence;
import org.firnline.logs.form.JsonLines;
import org.firnline.logs.layout.SampleLine;
import org.firnline.logs.layout.TableFinder;
import org.firnline.logs.text.EncodingFinder;
import org.firnline.logs.text.EncodingVerdict;
import org.firnline.logs.text.Lines;

/**
 * The first lines of a text: enough to decide how it is laid out.
 *
 * @param encoding its character set
 * @param lines the first lines that count, at most some hundreds
 */
record FileHead(EncodingVerdict encoding, List<SampleLine> lines) {
  private static final int ENOUGH_LINES = 600;
  private static final int ENOUGH_BYTES = 1 << 20;

  FileHead {
    lines = List.copyOf(lines);
  }

  /** Looks at a text; its character set is judged over all of its bytes. */
  static FileHead of(TextSource text, ReadingChoices choices, ReadingNotes notes)
      throws IOException {
    EncodingVerdict encoding = encoding(text, choices, notes);
    List<SampleLine> lines = lines(text, encoding);
    return new FileHead(encoding, text.isSheet() ? padded(lines) : lines);
  }

  /** Rows of a sheet end with their last filled cell; those of its table are made equally long. */
  private static List<SampleLine> padded(List<SampleLine> lines) {
    int widest = lines.stream().mapToInt(SampleLine::tabbedCells).max().orElse(1);
    return lines.stream()
        .map(line -> line.tabbedCells() * 2 > widest ? line.paddedTo(widest) : line)
        .toList();
  }

  private static EncodingVerdict encoding(
      TextSource text, ReadingChoices choices, ReadingNotes notes) throws IOException {
    if (text.encoding().isPresent()) {
      return text.encoding().get();
    }
    EncodingVerdict found;
    try (InputStream in = text.bytes().open()) {
      found = new EncodingFinder().find(in);
    }
    EncodingVerdict verdict = choices.encoding().map(chosen -> chosen(chosen, found)).orElse(found);
    notes.guess(
        "encoding", verdict.charset().name(), verdict.reason(), verdict.confidence(), "encoding");
    return verdict;
  }

  /** A chosen character set still skips the mark it begins with. */
  private static EncodingVerdict chosen(Charset charset, EncodingVerdict found) {
    int mark = found.charset().equals(charset) ? found.markLength() : 0;
    return new EncodingVerdict(charset, mark, "chosen by a person", Confidence.HIGH);
  }

  private static List<SampleLine> lines(TextSource text, EncodingVerdict encoding)
      throws IOException {
    List<SampleLine> sample = new ArrayList<>();
    int spoken = 0;
    int bytes = 0;
    boolean blankBefore = false;
    try (Lines lines = Lines.open(text.bytes(), encoding, text.firstNumber())) {
      while (spoken < ENOUGH_LINES && bytes < ENOUGH_BYTES && lines.advance()) {
        if (lines.number() < text.startLine()) {
          continue;
        }
        byte[] line = Arrays.copyOfRange(lines.buffer(), lines.from(), lines.to());
        SampleLine found = new SampleLine(lines.number(), line, lines.charset());
        boolean blank = found.isBlank();
        if (!blank || !blankBefore) {
          sample.add(found);
        }
        blankBefore = blank;
        spoken += blank ? 0 : 1;
        bytes += line.length;
      }
    }
    return sample;
  }

  /** Whether there is nothing to read. */
  boolean isBlank() {
    return lines.stream().allMatch(SampleLine::isBlank);
  }

  /** The character set of the lines' bytes. */
  Charset charset() {
    return lines.get(0).charset();
  }

  /** The first line that says anything. */
  private Optional<String> firstSpoken() {
    return lines.stream()
        .map(line -> line.text().replace("\0", "").strip())
        .filter(line -> !line.isEmpty())
        .findFirst();
  }

  /** Whether each line holds a JSON object. */
  boolean isJsonLines() {
    return lines.stream()
        .map(line -> line.text().strip())
        .filter(line -> line.length() > 2)
        .findFirst()
        .filter(JsonLines::isObject)
        .isPresent();
  }

  /** Whether the text begins as a JSON document of several lines does. */
  boolean isJsonDocument() {
    return firstSpoken().filter(JsonLines::beginsDocument).isPresent();
  }

  /** The delimiter that a first line such as "sep=;" announces. */
  Optional<Character> announcedDelimiter() {
    SampleLine line = lines.get(0);
    String first = line.text().replace("\uFEFF", "").stripLeading().replace("\"", "");
    boolean announces = TableFinder.isAnnouncement(line) && first.length() > 4;
    return announces ? Optional.of(first.charAt(4)) : Optional.empty();
  }
}
