package swineherd;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "swineherd", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule the_data_goes_one_way =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("units")
          .definedBy("swineherd.units..")
          .layer("rulebook")
          .definedBy("swineherd.rulebook..")
          .layer("setup")
          .definedBy("swineherd.setup..")
          .layer("figures")
          .definedBy("swineherd.figures..")
          .layer("outlook")
          .definedBy("swineherd.outlook..")
          .layer("advice")
          .definedBy("swineherd.advice..")
          .layer("rules")
          .definedBy("swineherd.rules..")
          .layer("compare")
          .definedBy("swineherd.compare..")
          .layer("report")
          .definedBy("swineherd.report..")
          .layer("cli")
          .definedBy("swineherd.cli..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("rules")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("compare", "report", "cli", "rules")
          .whereLayer("compare")
          .mayOnlyBeAccessedByLayers("report", "cli")
          .whereLayer("outlook")
          .mayOnlyBeAccessedByLayers("advice", "compare", "report", "cli", "rules")
          .whereLayer("figures")
          .mayOnlyBeAccessedByLayers("outlook", "advice", "compare", "report", "cli", "rules")
          .whereLayer("setup")
          .mayOnlyBeAccessedByLayers(
              "figures", "outlook", "advice", "compare", "report", "cli", "rules")
          .whereLayer("rulebook")
          .mayOnlyAccessLayers("units")
          .whereLayer("units")
          .mayNotAccessAnyLayer()
          .because("setup -> figures -> outlook -> advice -> report -> cli: no back and forth");

  @ArchTest
  static final ArchRule only_the_charts_load_a_drawing_library =
      noClasses()
          .that()
          .haveNameNotMatching("swineherd\\.report\\.Charts(\\$.*)?")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.knowm..", "de.erichseifert..", "java.awt..", "javax.swing..")
          .because("it takes longer to load than a whole check takes");

  @ArchTest
  static final ArchRule only_the_calendar_file_loads_a_calendar_library =
      noClasses()
          .that()
          .haveNameNotMatching("swineherd\\.report\\.CalendarFile(\\$.*)?")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("biweekly..", "com.github.mangstadt.vinnie..")
          .because("no other command needs it");
}
