package org.firnline.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Optional;

/** Values do not change, and a name says what a type is for. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class ShapesTest {
  @ArchTest
  static final ArchRule nothing_has_setters =
      noMethods()
          .should(be(describe("setters of a field", ShapesTest::setsField)))
          .because("a value is complete when it is made; a changed one is a new one")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule a_field_others_can_see_is_a_constant =
      fields()
          .that()
          .arePublic()
          .should()
          .beStatic()
          .andShould()
          .beFinal()
          .because("a field seen by others can never be renamed, checked or computed")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule nothing_static_changes =
      fields()
          .that()
          .areStatic()
          .should()
          .beFinal()
          .because("the same question must have the same answer, in any order and on any thread")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule absence_is_stored_in_records_only =
      noFields()
          .that()
          .areDeclaredInClassesThat(describe("are no records", type -> !type.isRecord()))
          .should()
          .haveRawType(Optional.class)
          .because("Optional is an answer; a class that computes knows what it has when it is made")
          .allowEmptyShould(true);

  /** Reading a log hands on what the person may have chosen or the file may have said. */
  @ArchTest
  static final ArchRule absence_is_not_handed_in =
      noMethods()
          .that(describe("are written by hand", ShapesTest::isWritten))
          .and()
          .areDeclaredInClassesThat()
          .resideOutsideOfPackages("org.firnline.logs.layout", "org.firnline.logs.stamp")
          .should(be(describe("taking an Optional", ShapesTest::takesOptional)))
          .because("a caller who has nothing to say should not have to say so")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule names_say_what_a_type_is_for =
      noClasses()
          .should()
          .haveNameMatching(".*(Manager|Helper|Utils?|Processor|Handler|Impl|Base|Data|Info)")
          .because("such an ending fits any type, so it says nothing about this one")
          .allowEmptyShould(true);

  /** "setAside" is a verb, "setSide" beside a field "side" is a setter. */
  private static boolean setsField(JavaMethod method) {
    String name = method.getName();
    if (!name.matches("set[A-Z].*") || method.getRawParameterTypes().isEmpty()) {
      return false;
    }
    String field = Character.toLowerCase(name.charAt(3)) + name.substring(4);
    return method.getOwner().tryGetField(field).isPresent();
  }

  private static boolean isWritten(JavaMethod method) {
    return !method.getModifiers().contains(JavaModifier.SYNTHETIC);
  }

  private static boolean takesOptional(JavaMethod method) {
    return method.getRawParameterTypes().stream()
        .anyMatch(type -> type.isEquivalentTo(Optional.class));
  }
}
