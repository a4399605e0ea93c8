package org.firnline.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The glossary leads from a word of the trade to its type, and never to nothing. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class GlossaryTest {
  private static final Pattern TYPE = Pattern.compile("`(\\w+)` \\|$", Pattern.MULTILINE);

  @ArchTest
  static void a_type_named_in_the_glossary_exists(JavaClasses classes) {
    List<String> named =
        TYPE.matcher(Repository.textOf(Repository.file("docs/glossary.md")))
            .results()
            .map((MatchResult row) -> row.group(1))
            .toList();
    assertThat(named).isNotEmpty();
    assertThat(classes.stream().map(JavaClass::getSimpleName))
        .as("types: a word that lost its type misleads the reader of docs/glossary.md")
        .containsAll(named);
  }
}
