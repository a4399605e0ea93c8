package org.firnline.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.firnline.logs.Log;
import org.firnline.logs.channel.Role;
import org.junit.jupiter.api.Test;

class LogReadingTest {
  private final LogReading reading = new LogReading();

  @Test
  void firnlineUnderstandsTheWholeFile() {
    Log log = reading.firnline().log().orElseThrow();
    assertThat(log.time().size()).isEqualTo(LogReading.ROWS);
    assertThat(log.channels()).hasSize(LogReading.CHANNELS);
    assertThat(log.channelsIn(Role.PRODUCT)).hasSize(2);
  }

  @Test
  void theBaselineSeesEveryCell() throws IOException {
    assertThat(reading.baseline()).isGreaterThan(LogReading.VALUES * 4L);
  }
}
