package org.firnline.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The picture of the house in the documentation is the rule, so it cannot go out of date. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class DrawingTest {
  private static final String DRAWING = "docs/architecture.puml";

  @ArchTest
  static final ArchRule code_uses_only_the_arrows_that_are_drawn =
      classes()
          .should(
              adhereToPlantUmlDiagram(
                  Repository.file(DRAWING), consideringOnlyDependenciesInDiagram()))
          .because("a reader trusts " + DRAWING + "; if the arrow is right, draw it there first")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule every_package_has_its_box =
      classes()
          .should()
          .resideInAnyPackage(boxes())
          .because("a package missing from " + DRAWING + " would be free of its rules")
          .allowEmptyShould(true);

  private static String[] boxes() {
    return Pattern.compile("<<(.+?)>>")
        .matcher(Repository.textOf(Repository.file(DRAWING)))
        .results()
        .map(MatchResult::group)
        .map(box -> box.substring(2, box.length() - 2))
        .toArray(String[]::new);
  }
}
