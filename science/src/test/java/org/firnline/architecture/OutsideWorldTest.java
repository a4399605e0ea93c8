package org.firnline.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Science is pure computing: what it leans on from outside is short and stands here. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class OutsideWorldTest {
  private static final String MATHEMATICS = "org.hipparchus..";

  @ArchTest
  static final ArchRule science_sees_the_jdk_and_one_library =
      classes()
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "org.firnline..", "java..", "javax.xml.stream..", "org.jspecify..", MATHEMATICS)
          .because("whoever uses science inherits everything it uses")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule only_numerics_sees_the_mathematics_library =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.firnline.numerics..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(MATHEMATICS)
          .because("the library can only be exchanged or checked if there is one door to it")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule science_touches_no_disk_network_database_or_journal =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.nio.file..", "java.net..", "java.sql..", "java.util.logging..", "java.rmi..")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.io\\.(File|FileReader|FileWriter|RandomAccessFile|Console)")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.io\\.File(In|Out)putStream")
          .because("science reads streams it is given and answers with values; the rest is app's")
          .allowEmptyShould(true);
}
