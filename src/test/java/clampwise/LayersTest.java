package clampwise;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleName;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Each package uses only what stands below it, and each library has its one room. */
@AnalyzeClasses(packages = "clampwise", importOptions = DoNotIncludeTests.class)
class LayersTest {
  private static final String[] DROOLS = {"org.drools..", "org.kie.."};

  /** Compiled rules use facts and the report, and nothing uses them. */
  private static final String RULES = "clampwise.rules..";

  @ArchTest
  static final ArchRule FLOORS =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("clampwise..")
          .withOptionalLayers(true)
          .layer("cli")
          .definedBy("clampwise.cli..")
          .layer("report")
          .definedBy("clampwise.report..", "clampwise.gate..")
          .layer("batch")
          .definedBy("clampwise.batch..")
          .layer("plan")
          .definedBy("clampwise.plan..")
          .layer("review")
          .definedBy("clampwise.review..")
          .layer("rules")
          .definedBy(RULES)
          .layer("repository")
          .definedBy("clampwise.repository..")
          .layer("rulebook")
          .definedBy("clampwise.rulebook..", "clampwise.policy..")
          .layer("facts")
          .definedBy(
              "clampwise.facts..",
              "clampwise.finding..",
              "clampwise.calculation..",
              "clampwise.takeoff..")
          .layer("job")
          .definedBy("clampwise.job..", "clampwise.catalogue..")
          .layer("ground")
          .definedBy("clampwise.calc..", "clampwise.units..", "clampwise.source..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("batch")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("plan")
          .mayOnlyBeAccessedByLayers("report")
          .whereLayer("review")
          .mayOnlyBeAccessedByLayers("cli", "report", "batch", "plan")
          .whereLayer("rules")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("repository")
          .mayOnlyBeAccessedByLayers("cli", "batch", "report")
          .whereLayer("rulebook")
          .mayOnlyBeAccessedByLayers("cli", "report", "plan", "review", "rules")
          .whereLayer("facts")
          .mayOnlyBeAccessedByLayers(
              "cli", "report", "batch", "plan", "review", "rules", "rulebook", "repository")
          .whereLayer("job")
          .mayOnlyBeAccessedByLayers(
              "cli", "report", "batch", "plan", "review", "rules", "rulebook", "facts");

  @ArchTest
  static final ArchRule GROUND_FLOOR_NEEDS_ONLY_THE_JDK =
      classes()
          .that()
          .resideInAnyPackage("clampwise.calc..", "clampwise.units..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("java..", "clampwise.calc..", "clampwise.units..", "org.jspecify..")
          .because("calculations must stand alone; only units know units");

  @ArchTest
  static final ArchRule RULE_ENGINE_IN_THE_RULEBOOK =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.rulebook..", RULES))
          .should()
          .dependOnClassesThat(resideInAnyPackage(DROOLS));

  @ArchTest
  static final ArchRule COMPILER_OF_RULES_IN_ONE_ROOM =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.rulebook.build..", RULES))
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("org.drools.compiler..", "org.drools.model.codegen.."))
          .because("the program starts without the compiler");

  @ArchTest
  static final ArchRule RULE_TEXTS_READ_BY_THE_BUILD_AND_FOR_OWN_RULES =
      noClasses()
          .that(
              resideOutsideOfPackages(
                  "clampwise.rulebook.build..", "clampwise.rulebook.own..", RULES))
          .should()
          .dependOnClassesThat(resideInAnyPackage("clampwise.rulebook.build.."));

  @ArchTest
  static final ArchRule OWN_RULES_NAMED_ON_THE_TOP_FLOOR =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.rulebook.own..", "clampwise.cli.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("clampwise.rulebook.own.."))
          .because("rules are code: nothing that is reviewed may name a folder of them");

  @ArchTest
  static final ArchRule TERMINAL_IN_THE_COMMANDS =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.cli.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("picocli..", "org.fusesource.jansi.."));

  @ArchTest
  static final ArchRule BINDING_BELOW_AND_REPORTS_ABOVE =
      noClasses()
          .that(
              resideOutsideOfPackages(
                  "clampwise.job..",
                  "clampwise.catalogue..",
                  "clampwise.report..",
                  "clampwise.batch.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("com.fasterxml.jackson.."));

  @ArchTest
  static final ArchRule GRAPHS_IN_THE_FACTS =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.facts.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.jgrapht.."));

  @ArchTest
  static final ArchRule GEOMETRY_IN_FACTS_AND_DRAWINGS =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.facts..", "clampwise.plan.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.locationtech.jts.."));

  @ArchTest
  static final ArchRule YAML_AND_CSV_IN_THE_SOURCE =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.source.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.snakeyaml..", "org.apache.commons.csv.."));

  @ArchTest
  static final ArchRule GIT_IN_THE_REPOSITORY =
      noClasses()
          .that(resideOutsideOfPackages("clampwise.repository.."))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.eclipse.jgit.."));

  @ArchTest
  static final ArchRule NO_NETWORK =
      noClasses()
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                      "java.net.http..", "java.nio.channels..", "javax.net..", "java.rmi..")
                  .or(simpleName("Socket"))
                  .or(simpleName("ServerSocket"))
                  .or(simpleName("DatagramSocket"))
                  .or(simpleName("InetAddress"))
                  .or(simpleName("InetSocketAddress"))
                  .or(simpleName("HttpURLConnection"))
                  .or(simpleName("URLConnection")))
          .because("nothing that is reviewed leaves the machine");

  @ArchTest
  static final ArchRule NO_STATIC_STATE =
      fields()
          .that()
          .areStatic()
          .and()
          .areDeclaredInClassesThat(resideOutsideOfPackages(RULES))
          .should()
          .beFinal();
}
