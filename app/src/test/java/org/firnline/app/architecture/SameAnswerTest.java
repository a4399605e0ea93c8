package org.firnline.app.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The same click gives the same answer: on any day, machine and in any country. */
class SameAnswerTest {
  private static final DescribedPredicate<JavaMethodCall> ASK_THE_TIME =
      DescribedPredicate.describe(
          "java.time now() without a clock",
          call ->
              call.getName().equals("now")
                  && call.getTargetOwner().getPackageName().equals("java.time")
                  && call.getTarget().getRawParameterTypes().stream()
                      .noneMatch(type -> type.getName().equals("java.time.Clock")));

  @Test
  void only_commands_speak_to_the_terminal() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.firnline.app.cli..")
        .should(ACCESS_STANDARD_STREAMS)
        .because("nobody reads the terminal of a served laboratory")
        .allowEmptyShould(true)
        .check(House.APP);
    noClasses()
        .should()
        .callMethod(Throwable.class, "printStackTrace")
        .because("an error is logged once, where it is dealt with")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void time_comes_from_a_clock() {
    noClasses()
        .should()
        .callMethodWhere(ASK_THE_TIME)
        .orShould()
        .callConstructor(java.util.Date.class)
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .because("what happens at midnight or after a year must be testable; pass a Clock in")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void numbers_text_and_bytes_do_not_depend_on_the_machine() {
    noClasses()
        .should()
        .callMethod(Locale.class, "getDefault")
        .orShould()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .orShould()
        .callMethod(String.class, "toLowerCase")
        .orShould()
        .callMethod(String.class, "toUpperCase")
        .orShould()
        .callMethod(Charset.class, "defaultCharset")
        .orShould()
        .callMethod(String.class, "getBytes")
        .orShould()
        .callConstructor(String.class, byte[].class)
        .orShould()
        .callConstructor(InputStreamReader.class, InputStream.class)
        .because("the reader's country is chosen in the settings, not by the server's; name it")
        .allowEmptyShould(true)
        .check(House.APP);
  }
}
