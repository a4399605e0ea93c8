package org.firnline.app.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import org.junit.jupiter.api.Test;

/** A controller binds, asks one service and chooses a view; the database has its own rooms. */
class PagesTest {
  private static final String CONTROLLER = "org.springframework.stereotype.Controller";
  private static final DescribedPredicate<JavaClass> ANSWERS_THE_BROWSER =
      describe(
          "answer the browser",
          type -> type.isAnnotatedWith(CONTROLLER) || type.isMetaAnnotatedWith(CONTROLLER));
  private static final String[] DATABASE = {
    "org.springframework.jdbc..",
    "java.sql..",
    "javax.sql..",
    "org.sqlite..",
    "com.zaxxer.hikari..",
    "org.flywaydb.."
  };

  @Test
  void a_controller_is_hidden_and_named_after_what_it_shows() {
    classes()
        .that(ANSWERS_THE_BROWSER)
        .should()
        .notBePublic()
        .andShould()
        .haveNameMatching(".*(Page|Pages|Controller)")
        .because("only the browser calls a controller, and its name tells which page to look at")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void a_controller_does_not_ask_the_database() {
    noClasses()
        .that(ANSWERS_THE_BROWSER)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(DATABASE)
        .because("what a page decides must be testable without a database")
        .allowEmptyShould(true)
        .check(House.APP);
  }

  @Test
  void only_store_and_queries_speak_to_the_database() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.firnline.app.store..")
        .and()
        .haveNameNotMatching(".*Queries(\\$.*)?")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(DATABASE)
        .because("every SQL statement stands in a type called ...Queries, where it is found")
        .allowEmptyShould(true)
        .check(House.APP);
  }
}
