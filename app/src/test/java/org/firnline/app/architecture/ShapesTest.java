package org.firnline.app.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaPackage;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Values do not change, names say what a type is for, and packages introduce themselves. */
class ShapesTest {
  private static final String AUTOWIRED = "org.springframework.beans.factory.annotation.Autowired";

  @Test
  void nothing_has_setters() {
    noMethods()
        .that(describe("take something", method -> !method.getRawParameterTypes().isEmpty()))
        .should()
        .haveNameMatching("set[A-Z].*")
        .because("a value is complete when it is made; a changed one is a new one")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void a_field_others_can_see_is_a_constant() {
    fields()
        .that()
        .arePublic()
        .should()
        .beStatic()
        .andShould()
        .beFinal()
        .because("a field seen by others can never be renamed, checked or computed")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void nothing_static_changes() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .because("two people at two browsers share every static field")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void collaborators_come_through_the_constructor() {
    noFields()
        .should()
        .beAnnotatedWith(AUTOWIRED)
        .orShould()
        .beAnnotatedWith("jakarta.annotation.Resource")
        .orShould()
        .beAnnotatedWith("jakarta.inject.Inject")
        .because("what a type needs must be visible and given in a test without a framework")
        .allowEmptyShould(true)
        .check(House.APP);
    noMethods()
        .should()
        .beAnnotatedWith(AUTOWIRED)
        .because("what a type needs must be complete when it is made")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void names_say_what_a_type_is_for() {
    noClasses()
        .should()
        .haveNameMatching(".*(Manager|Helper|Utils?|Processor|Handler|Impl|Base|Data|Info)")
        .because("such an ending fits any type, so it says nothing about this one")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void every_package_has_a_null_marked_package_info() {
    assertThat(House.APP.stream().map(JavaClass::getPackage).distinct())
        .as(
            "packages without a package-info.java annotated @NullMarked: a newcomer finds no"
                + " purpose there, and null is not checked")
        .filteredOn(room -> !isIntroduced(room))
        .extracting(JavaPackage::getName)
        .isEmpty();
  }

  private static boolean isIntroduced(JavaPackage room) {
    return room.tryGetPackageInfo()
        .map(introduction -> introduction.isAnnotatedWith(NullMarked.class))
        .orElse(false);
  }
}
