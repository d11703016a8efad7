package org.griplore.store;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.griplore.store.archive.Addition;
import org.griplore.store.archive.Archive;
import org.griplore.store.archive.Delivery;

@AnalyzeClasses(
    packages = "org.griplore.store",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule SQL_IN_THE_ARCHIVE_ONLY =
      noClasses()
          .that()
          .resideOutsideOfPackage("..store.archive..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..");

  @ArchTest
  static final ArchRule LUCENE_IN_THE_TEXT_INDEX_ONLY =
      noClasses()
          .that()
          .resideOutsideOfPackage("..store.text..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.lucene..");

  @ArchTest
  static final ArchRule THE_VOCABULARY_KNOWS_NOTHING_ELSE =
      noClasses()
          .that()
          .resideInAPackage("..store.vocabulary..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..store.archive..", "..store.text..", "..store.check..");

  @ArchTest
  static final ArchRule ROOMS_OF_THE_ARCHIVE_DO_NOT_KNOW_ITS_DOORS =
      noClasses()
          .that()
          .resideInAPackage("..store.archive.*..")
          .should()
          .dependOnClassesThat()
          .belongToAnyOf(Archive.class, Addition.class, Delivery.class);

  @ArchTest
  static final ArchRule NO_PACKAGE_CIRCLES =
      slices().matching("org.griplore.store.(*)..").should().beFreeOfCycles();
}
