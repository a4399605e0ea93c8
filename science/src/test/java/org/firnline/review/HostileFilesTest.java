package org.firnline.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.firnline.logs.LogReader;
import org.firnline.logs.Reading;
import org.firnline.logs.SharedLogs;

/**
 * Whatever bytes come in, a reading comes out: rows accounted for, and a review if there is a log.
 */
class HostileFilesTest {
  private static final String[] FILES = {
    "layouts/x01.txt", "layouts/x02.txt", "layouts/x04.txt", "layouts/x05.txt", "layouts/x06.txt",
    "layouts/x09.txt", "layouts/x10.txt", "layouts/x16.txt", "layouts/x19.txt", "layouts/x20.txt",
    "layouts/x22.txt", "layouts/x23.txt", "layouts/x25.txt", "layouts/x30.txt"
  };
  private static final String SIGNS = "0123456789-+.,;:\t \"'/#EeTZ{}[]\n\r\0°µ%<>xNaI\\";

  @Property(tries = 1500, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
  void broken_files_are_read_as_far_as_they_go(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 13) int file) {
    Random random = new Random(seed);
    byte[] bytes = SharedLogs.bytes(FILES[file]);
    int changes = 1 + random.nextInt(12);
    for (int i = 0; i < changes; i++) {
      bytes = broken(bytes, random);
    }
    check(bytes);
  }

  @Property(tries = 500, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
  void noise_is_no_log_or_a_strange_one(@ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    int length = random.nextInt(2000);
    for (int i = 0; i < length; i++) {
      text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    check(random.nextBoolean() ? bytes : raw(random));
  }

  private static byte[] raw(Random random) {
    byte[] bytes = new byte[random.nextInt(3000)];
    random.nextBytes(bytes);
    return bytes;
  }

  private static byte[] broken(byte[] bytes, Random random) {
    if (bytes.length < 4) {
      return bytes;
    }
    int at = random.nextInt(bytes.length);
    int other = random.nextInt(bytes.length);
    byte[] changed = bytes.clone();
    switch (random.nextInt(5)) {
      case 0 -> changed[at] = (byte) SIGNS.charAt(random.nextInt(SIGNS.length()));
      case 1 -> changed[at] = (byte) random.nextInt(256);
      case 2 -> changed = Arrays.copyOf(bytes, at);
      case 3 -> {
        changed = Arrays.copyOf(bytes, bytes.length - 1);
        System.arraycopy(bytes, at + 1, changed, at, bytes.length - at - 1);
      }
      default -> {
        int from = Math.min(at, other);
        int to = Math.max(at, other);
        byte[] piece = Arrays.copyOfRange(bytes, from, to);
        changed = Arrays.copyOf(bytes, bytes.length + piece.length);
        System.arraycopy(piece, 0, changed, bytes.length, piece.length);
      }
    }
    return changed;
  }

  private static void check(byte[] bytes) {
    Reading reading = new LogReader().read("hostile", bytes);
    assertThat(reading.rows().read())
        .isEqualTo(reading.rows().kept() + reading.rows().setAside() + reading.rows().rejected());
    reading
        .log()
        .ifPresent(
            log -> {
              // Tables of one file that share their times share their rows.
              int kept = (int) reading.rows().kept();
              boolean parts = reading.layout().form().endsWith("parts");
              assertThat(log.time().size()).isBetween(parts ? 1 : kept, kept);
              assertThat(new Reviewer().review(log, ReviewContext.none())).isNotNull();
            });
  }
}
