package org.firnline.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The nouns are values: equal when they say the same, and never changed behind one's back. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class NounsTest {
  @ArchTest
  static final ArchRule a_noun_has_no_array_component =
      noFields()
          .that()
          .areDeclaredInClassesThat(describe("are records", JavaClass::isRecord))
          .and()
          .areDeclaredInClassesThat()
          .resideInAnyPackage(
              "org.firnline.units..",
              "org.firnline.evidence..",
              "org.firnline.matter..",
              "org.firnline.lab..")
          .and()
          .areNotStatic()
          .should()
          .haveRawType(describe("that are arrays", JavaClass::isArray))
          .because("an array can be changed by whoever holds it and compares by identity")
          .allowEmptyShould(true);
}
