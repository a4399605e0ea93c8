package org.firnline.app.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneTimeCodesTest {
  private static final byte[] SECRET = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);

  /** Source: RFC 6238, appendix B, SHA-1 rows (from memory). */
  @ParameterizedTest
  @CsvSource({
    "59, 94287082",
    "1111111109, 07081804",
    "1111111111, 14050471",
    "1234567890, 89005924",
    "2000000000, 69279037",
    "20000000000, 65353130"
  })
  void r_sig_05_codes_are_those_of_the_standard(long time_s, String code) {
    assertThat(OneTimeCodes.code(SECRET, time_s / 30, 8)).isEqualTo(code);
  }

  /** Source: RFC 4226, appendix D, counts 0 and 1 (from memory). */
  @ParameterizedTest
  @CsvSource({"0, 755224", "1, 287082"})
  void six_digits_are_those_of_the_counted_standard(long count, String code) {
    assertThat(OneTimeCodes.code(SECRET, count, 6)).isEqualTo(code);
  }

  /** Source: RFC 4648, section 10. */
  @ParameterizedTest
  @CsvSource({"f, MY", "fo, MZXQ", "foo, MZXW6", "foob, MZXW6YQ", "fooba, MZXW6YTB"})
  void base32_is_that_of_the_standard(String text, String coded) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    assertThat(OneTimeCodes.base32(bytes)).isEqualTo(coded);
    assertThat(OneTimeCodes.fromBase32(coded)).isEqualTo(bytes);
  }

  @Test
  void a_code_is_taken_a_step_early_or_late_and_no_other_time() {
    String secret = OneTimeCodes.base32(SECRET);
    String code = OneTimeCodes.code(SECRET, 1_000, 6);
    assertThat(OneTimeCodes.step(secret, code, Instant.ofEpochSecond(30_000))).hasValue(1_000);
    assertThat(OneTimeCodes.step(secret, code, Instant.ofEpochSecond(30_059))).hasValue(1_000);
    assertThat(OneTimeCodes.step(secret, code, Instant.ofEpochSecond(29_970))).hasValue(1_000);
    assertThat(OneTimeCodes.step(secret, code, Instant.ofEpochSecond(30_060))).isEmpty();
    assertThat(OneTimeCodes.step(secret, "", Instant.ofEpochSecond(30_000))).isEmpty();
  }

  @Test
  void secrets_differ_and_can_be_read_by_other_programs() {
    String secret = OneTimeCodes.freshSecret();
    assertThat(secret).hasSize(32).isNotEqualTo(OneTimeCodes.freshSecret());
    assertThat(OneTimeCodes.address(secret, "rowan"))
        .isEqualTo("otpauth://totp/Firnline:rowan?secret=" + secret + "&issuer=Firnline");
    assertThatThrownBy(() -> OneTimeCodes.fromBase32("01")).hasMessageContaining("not Base32");
  }
}
