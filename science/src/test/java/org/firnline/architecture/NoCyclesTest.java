package org.firnline.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Every package can be read, tested and thrown away without the ones that use it. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class NoCyclesTest {
  @ArchTest
  static final ArchRule packages_do_not_use_each_other_in_a_circle =
      slices()
          .matching("org.firnline.(**)")
          .should()
          .beFreeOfCycles()
          .because("packages in a circle are one large package with many names")
          .allowEmptyShould(true);
}
