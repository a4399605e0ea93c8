package org.firnline.app.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What a person does is one package: it can be changed or dropped without touching the others. */
class FeaturesTest {
  private static final Pattern FEATURE =
      Pattern.compile(
          "org\\.firnline\\.app\\.(today|ask|plan|run|library|care|record|settings)(\\..*)?");

  @Test
  void features_do_not_see_each_other() {
    slices()
        .assignedFrom(new ByFeature())
        .should()
        .notDependOnEachOther()
        .because("features meet in store and in science, never in each other's insides")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void packages_do_not_use_each_other_in_a_circle() {
    slices()
        .matching("org.firnline.app.(**)")
        .should()
        .beFreeOfCycles()
        .because("packages in a circle are one large package with many names")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  private static final class ByFeature implements SliceAssignment {
    @Override
    public SliceIdentifier getIdentifierOf(JavaClass type) {
      Matcher feature = FEATURE.matcher(type.getPackageName());
      return feature.matches() ? SliceIdentifier.of(feature.group(1)) : SliceIdentifier.ignore();
    }

    @Override
    public String getDescription() {
      return "features";
    }
  }
}
