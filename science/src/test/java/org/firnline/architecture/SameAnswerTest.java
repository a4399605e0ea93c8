package org.firnline.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.text.DecimalFormat;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Random;
import java.util.Scanner;
import java.util.TimeZone;

/** The same input gives the same answer: on any day, machine and in any country. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class SameAnswerTest {
  @ArchTest
  static final ArchRule science_prints_nothing =
      noClasses()
          .should(ACCESS_STANDARD_STREAMS)
          .orShould()
          .callMethodWhere(Calls.named("java.lang.Throwable", "printStackTrace"))
          .because("a result carries its own warnings; what is printed is lost")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule time_comes_from_outside =
      noClasses()
          .should()
          .callMethodWhere(Calls.withoutArguments("java\\.time\\..*", "now"))
          .orShould()
          .callMethodWhere(Calls.named("java.time.Clock", "system.*|tick.*"))
          .orShould()
          .callConstructor(java.util.Date.class)
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .because("a run reviewed next year must give today's findings; pass the time in")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule chance_comes_from_a_seed =
      noClasses()
          .should()
          .callMethod(Math.class, "random")
          .orShould()
          .callConstructor(Random.class)
          .orShould()
          .callMethodWhere(Calls.named("java.util.UUID", "randomUUID"))
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.util\\.concurrent\\.ThreadLocalRandom|java\\.security\\.SecureRandom")
          .because("a band that differs at every look earns no trust; pass a seed in")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule numbers_and_text_do_not_depend_on_the_country =
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
          .callConstructor(DecimalFormat.class, String.class)
          .orShould()
          .callMethodWhere(
              Calls.named("java.time.format.DateTimeFormatter", "ofPattern").and(Calls.taking(1)))
          .because("a decimal comma in the wrong place is a factor of a thousand; name the Locale")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule bytes_and_hours_do_not_depend_on_the_machine =
      noClasses()
          .should()
          .callMethod(Charset.class, "defaultCharset")
          .orShould()
          .callMethod(String.class, "getBytes")
          .orShould()
          .callConstructor(String.class, byte[].class)
          .orShould()
          .callConstructor(InputStreamReader.class, InputStream.class)
          .orShould()
          .callConstructor(Scanner.class, InputStream.class)
          .orShould()
          .callMethod(ZoneId.class, "systemDefault")
          .orShould()
          .callMethod(TimeZone.class, "getDefault")
          .because("the same file must read the same everywhere; name the charset and the zone")
          .allowEmptyShould(true);
}
