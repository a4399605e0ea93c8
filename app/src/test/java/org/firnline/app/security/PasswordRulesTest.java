package org.firnline.app.security;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PasswordRulesTest {
  @Test
  void r_sig_05_long_sentences_are_taken_whatever_their_characters() {
    assertThat(PasswordRules.refusal("heron walks slowly", "rowan")).isEmpty();
    assertThat(PasswordRules.refusal("größer als der See", "rowan")).isEmpty();
  }

  @Test
  void r_sig_05_short_endless_and_guessed_ones_are_not() {
    assertThat(PasswordRules.refusal("heron walks", "rowan")).contains("short");
    assertThat(PasswordRules.refusal("heron ".repeat(13), "rowan")).contains("long");
    assertThat(PasswordRules.refusal("aaaaaaaaaaaabb", "rowan")).contains("guessed");
    assertThat(PasswordRules.refusal("my Password is long", "rowan")).contains("guessed");
    assertThat(PasswordRules.refusal("walks like Rowan", "rowan")).contains("guessed");
  }
}
