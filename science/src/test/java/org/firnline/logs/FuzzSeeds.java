package org.firnline.logs;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/** Writes files for the fuzzer to begin with: one of each packed form, and layouts by chance. */
public final class FuzzSeeds {
  private static final String TEXT =
      "time_utc,shelf_C,p_mbar\n"
          + "2026-10-12T08:00:00Z,-40.0,0.081\n"
          + "2026-10-12T08:01:00Z,-40.0,0.08\n";

  private FuzzSeeds() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    write(folder, "zip", PackedFiles.zip("a.csv", TEXT, "b.csv", TEXT));
    write(folder, "gz", PackedFiles.gzip(TEXT.getBytes(StandardCharsets.UTF_8)));
    write(
        folder,
        "xlsx",
        PackedFiles.workbook(
            "<row><c t=\"s\"><v>0</v></c><c t=\"str\"><v>Shelf C</v></c></row>"
                + "<row><c s=\"1\"><v>46307.5</v></c><c><v>-40.1</v></c></row>"
                + "<row><c s=\"1\"><v>46307.6</v></c><c><v>-40.2</v></c></row>",
            "<si><t>time</t></si>"));
    write(
        folder,
        "ods",
        PackedFiles.openDocument(
            "<t:table-row><t:table-cell o:value-type=\"float\" o:value=\"1\"/></t:table-row>"));
    for (int seed = 0; seed < 20; seed++) {
      byte[] whole = LayoutAxes.drawn(new Random(seed)).bytes();
      write(folder, "axes" + seed, java.util.Arrays.copyOf(whole, Math.min(whole.length, 1500)));
    }
  }

  private static void write(Path folder, String name, byte[] bytes) throws IOException {
    Files.write(folder.resolve("seed-" + name), bytes);
  }
}
