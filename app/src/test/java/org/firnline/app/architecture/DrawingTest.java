package org.firnline.app.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pictures of the house in the documentation are the rule, so they cannot go out of date. */
class DrawingTest {
  private static final String INSIDE = "architecture-app.puml";

  @ParameterizedTest
  @ValueSource(strings = {"architecture.puml", INSIDE})
  void code_uses_only_the_arrows_that_are_drawn(String drawing) {
    classes()
        .should(
            adhereToPlantUmlDiagram(House.drawing(drawing), consideringOnlyDependenciesInDiagram()))
        .because("a reader trusts docs/" + drawing + "; if the arrow is right, draw it there first")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void every_package_has_its_box() throws IOException {
    String[] boxes =
        Pattern.compile("(?<=<<)[^<>]+(?=>>)")
            .matcher(Files.readString(House.drawing(INSIDE)))
            .results()
            .map(MatchResult::group)
            .toArray(String[]::new);
    classes()
        .should()
        .resideInAnyPackage(boxes)
        .because("a package missing from docs/" + INSIDE + " would be free of its rules")
        .allowEmptyShould(true)
        .check(House.APP);
  }
}
