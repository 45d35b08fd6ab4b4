package underfoot.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Imports go one way, down the list of packages in DEVELOPERS.md. */
@AnalyzeClasses(packages = "underfoot", importOptions = ImportOption.DoNotIncludeTests.class)
class ImportsGoOneWayTest {
  @ArchTest static final ArchRule quantities_know_nobody = knows("quantity");
  @ArchTest static final ArchRule scenarios_build_on_quantities = knows("scenario", "quantity");
  @ArchTest static final ArchRule workings_build_on_quantities = knows("working", "quantity");

  @ArchTest
  static final ArchRule knowledge_builds_on_scenarios =
      knows("knowledge", "quantity", "scenario", "working");

  @ArchTest
  static final ArchRule measuring_builds_on_knowledge =
      knows("measure", "quantity", "scenario", "working", "knowledge");

  @ArchTest
  static final ArchRule build_ups_build_on_measures =
      knows("buildup", "quantity", "scenario", "working", "knowledge", "measure");

  @ArchTest
  static final ArchRule the_language_of_rules_builds_on_knowledge =
      knows("language", "quantity", "scenario", "working", "knowledge");

  @ArchTest
  static final ArchRule reasoning_builds_on_build_ups =
      knows(
          "reasoning",
          "quantity",
          "scenario",
          "working",
          "knowledge",
          "measure",
          "language",
          "buildup");

  @ArchTest
  static final ArchRule plans_build_on_reasoning =
      knows(
          "plan",
          "quantity",
          "scenario",
          "working",
          "knowledge",
          "measure",
          "language",
          "buildup",
          "reasoning");

  @ArchTest
  static final ArchRule talks_build_on_plans =
      knows(
          "talk",
          "quantity",
          "scenario",
          "working",
          "knowledge",
          "measure",
          "language",
          "buildup",
          "reasoning",
          "plan");

  @ArchTest
  static final ArchRule lessons_build_on_plans =
      knows(
          "lesson",
          "quantity",
          "scenario",
          "working",
          "knowledge",
          "measure",
          "language",
          "buildup",
          "reasoning",
          "plan");

  @ArchTest
  static final ArchRule reports_build_on_plans =
      knows(
          "report",
          "quantity",
          "scenario",
          "working",
          "knowledge",
          "measure",
          "language",
          "buildup",
          "reasoning",
          "plan",
          "lesson");

  @ArchTest
  static final ArchRule no_package_goes_round_in_a_circle =
      slices()
          .matching("underfoot.(*)..")
          .should()
          .beFreeOfCycles()
          .because("a circle cannot be read from one end to the other");

  @ArchTest
  static final ArchRule only_the_command_line_prints =
      noClasses()
          .that()
          .resideOutsideOfPackage("underfoot.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because("a library that prints cannot be used by another program");

  @ArchTest
  static final ArchRule nothing_static_changes =
      noFields()
          .that()
          .areStatic()
          .should()
          .notBeFinal()
          .because("shared state that changes makes one advice depend on another");

  private static ArchRule knows(String name, String... known) {
    String[] allowed = new String[known.length + 1];
    allowed[0] = "underfoot." + name + "..";
    for (int i = 0; i < known.length; i++) {
      allowed[i + 1] = "underfoot." + known[i] + "..";
    }
    return noClasses()
        .that()
        .resideInAPackage("underfoot." + name + "..")
        .should()
        .dependOnClassesThat(
            com.tngtech.archunit.base.DescribedPredicate.describe(
                "are ours but not below " + name,
                type ->
                    type.getPackageName().startsWith("underfoot")
                        && !com.tngtech.archunit.core.domain.JavaClass.Predicates
                            .resideInAnyPackage(allowed)
                            .test(type)))
        .allowEmptyShould(true)
        .because("imports go one way, so that each package can be understood without those above");
  }
}
