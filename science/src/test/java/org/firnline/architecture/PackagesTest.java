package org.firnline.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import org.jspecify.annotations.NullMarked;

/** Every package introduces itself, and null crosses none of its methods. */
@AnalyzeClasses(packages = "org.firnline", importOptions = ImportOption.DoNotIncludeTests.class)
class PackagesTest {
  @ArchTest
  static void every_package_has_a_null_marked_package_info(JavaClasses classes) {
    assertThat(classes.stream().map(JavaClass::getPackage).distinct())
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
