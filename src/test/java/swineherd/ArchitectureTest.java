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
          .layer("ask")
          .definedBy("swineherd.ask..")
          .layer("cli")
          .definedBy("swineherd.cli..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("ask")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("ask", "cli")
          .whereLayer("rules")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("compare", "report", "ask", "cli", "rules")
          .whereLayer("compare")
          .mayOnlyBeAccessedByLayers("report", "ask", "cli")
          .whereLayer("outlook")
          .mayOnlyBeAccessedByLayers("advice", "compare", "report", "ask", "cli", "rules")
          .whereLayer("figures")
          .mayOnlyBeAccessedByLayers(
              "outlook", "advice", "compare", "report", "ask", "cli", "rules")
          .whereLayer("setup")
          .mayOnlyBeAccessedByLayers(
              "figures", "outlook", "advice", "compare", "report", "ask", "cli", "rules")
          .whereLayer("rulebook")
          .mayOnlyAccessLayers("units")
          .whereLayer("units")
          .mayNotAccessAnyLayer()
          .because(
              "setup -> figures -> outlook -> advice -> report -> ask -> cli: no back and forth");

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
  static final ArchRule only_the_questionnaire_at_a_terminal_loads_a_line_editor =
      noClasses()
          .that()
          .haveNameNotMatching("swineherd\\.ask\\.TerminalTalk(\\$.*)?")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.jline..")
          .because("no other command needs it");

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
