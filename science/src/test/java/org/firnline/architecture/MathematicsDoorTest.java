package org.firnline.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
import java.util.stream.Stream;

/** What goes in and out of the door to the mathematics library is our own. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class MathematicsDoorTest {
  private static final DescribedPredicate<JavaClass> OF_THE_LIBRARY =
      JavaClass.Predicates.resideInAPackage("org.hipparchus..");
  private static final String REASON =
      "a type of the mathematics library seen from outside numerics walks past the door";

  @ArchTest
  static final ArchRule no_public_method_takes_or_gives_a_type_of_the_library =
      noCodeUnits()
          .that(describe("can be called from outside", MathematicsDoorTest::isOpen))
          .should(be(describe("showing a type of the library", MathematicsDoorTest::showsLibrary)))
          .because(REASON)
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule no_open_field_has_a_type_of_the_library =
      noFields()
          .that(describe("can be seen from outside", MathematicsDoorTest::isOpen))
          .should()
          .haveRawType(OF_THE_LIBRARY)
          .because(REASON)
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule no_public_type_extends_a_type_of_the_library =
      noClasses()
          .that()
          .arePublic()
          .should()
          .beAssignableTo(OF_THE_LIBRARY)
          .because(REASON)
          .allowEmptyShould(true);

  private static boolean isOpen(JavaMember member) {
    Set<JavaModifier> modifiers = member.getModifiers();
    return member.getOwner().getModifiers().contains(JavaModifier.PUBLIC)
        && (modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED));
  }

  private static boolean showsLibrary(JavaCodeUnit unit) {
    Stream<JavaType> givenAndTaken =
        Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream());
    Stream<JavaClass> types =
        Stream.concat(
            givenAndTaken.map(JavaType::getAllInvolvedRawTypes).flatMap(Set::stream),
            unit.getExceptionTypes().stream());
    return types.anyMatch(OF_THE_LIBRARY);
  }
}
