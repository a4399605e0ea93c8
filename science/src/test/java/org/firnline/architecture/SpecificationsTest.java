package org.firnline.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Test;

/** Tests are pages of specification: a name is a sentence, and none is switched off. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.OnlyIncludeTests.class)
class SpecificationsTest {
  @ArchTest
  static final ArchRule a_test_is_named_by_what_it_claims =
      methods()
          .that()
          .areAnnotatedWith(Test.class)
          .should()
          .haveNameNotMatching("test.*")
          .because("a reader of the report knows already that it is a test");

  @ArchTest
  static final ArchRule no_test_is_switched_off =
      noMethods()
          .should()
          .beAnnotatedWith(Disabled.class)
          .because("a test that does not run checks nothing, and nobody remembers it");

  @ArchTest
  static final ArchRule no_group_of_tests_is_switched_off =
      noClasses()
          .should()
          .beAnnotatedWith(Disabled.class)
          .because("tests that do not run check nothing, and nobody remembers them");
}
