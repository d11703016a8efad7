package org.griplore.ui;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

/** The walls between the modules. */
@AnalyzeClasses(
    packages = "org.griplore",
    importOptions = {ImportOption.DoNotIncludeTests.class, NoTestJars.class})
class ModuleWallsTest {
  @ArchTest
  static final ArchRule ingestAndQueryNeverSeeEachOther =
      noClasses()
          .that()
          .resideInAPackage("org.griplore.ingest..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.griplore.query..", "org.griplore.ui..");

  @ArchTest
  static final ArchRule queryKnowsTheStoreOnly =
      noClasses()
          .that()
          .resideInAPackage("org.griplore.query..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.griplore.ingest..", "org.griplore.ui..");

  @ArchTest
  static final ArchRule theStoreKnowsNobody =
      noClasses()
          .that()
          .resideInAPackage("org.griplore.store..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.griplore.ingest..", "org.griplore.query..", "org.griplore.ui..");

  @ArchTest
  static final ArchRule databasesAreTheStores =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.griplore.store.archive..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.sql..", "org.sqlite..");

  @ArchTest
  static final ArchRule luceneIsTheTextIndexs =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.griplore.store.text..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.apache.lucene..");

  @ArchTest
  static final ArchRule workbooksAndPagesAreReadInIngest =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.griplore.ingest.grid..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.dhatim.fastexcel.reader..",
              "org.jsoup..",
              "org.commonmark..",
              "org.apache.poi..",
              "org.apache.pdfbox..",
              "org.apache.james..",
              "org.apache.commons.compress..");

  @ArchTest
  static final ArchRule noCyclesBetweenRoomsOfIngest =
      SlicesRuleDefinition.slices().matching("org.griplore.ingest.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule workbooksAreWrittenInRenderings =
      noClasses()
          .that()
          .resideOutsideOfPackages("org.griplore.ui.render..", "org.griplore.ingest..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.dhatim.fastexcel..");

  @ArchTest
  static final ArchRule distributionsAndLinearAlgebraAreQuerys =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.griplore.query..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.hipparchus..", "org.ejml..");

  @ArchTest
  static final ArchRule theWebServerAndTheCommandLineAreUis =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.griplore.ui..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("io.javalin..", "picocli..", "gg.jte..");

  @ArchTest
  static final ArchRule renderingsComputeNothing =
      noClasses()
          .that()
          .resideInAPackage("org.griplore.ui.render..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.griplore.query.evidence..", "org.griplore.store.archive..");

  @ArchTest
  static final ArchRule noCyclesBetweenPackages =
      SlicesRuleDefinition.slices().matching("org.griplore.(*.*)..").should().beFreeOfCycles();
}
