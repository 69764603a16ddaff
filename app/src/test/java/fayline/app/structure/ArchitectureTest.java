package fayline.app.structure;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The house's dependency rules. Each rule is also shown to bite: its packages hold classes and a planted breach is caught. */
class ArchitectureTest {
    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("fayline");
    private static final JavaClasses BREACHES = new ClassFileImporter()
            .withImportOption(new ImportOption.OnlyIncludeTests())
            .importPackages("fayline.basis.breach", "fayline.flow.planner.breach");
    private static final int LEAST_CLASSES = 300;

    private static final String[] ENGINE = {"fayline.basis..", "fayline.method..", "fayline.flow.."};
    private static final List<String> BASIS = List.of("units", "finding", "geometry", "numeric");
    private static final List<String> METHOD = List.of(
            "uncertainty",
            "chart",
            "rate",
            "forecast",
            "atmosphere",
            "tube",
            "drive",
            "material",
            "laminate",
            "cure",
            "climate",
            "vacuum",
            "mix",
            "bag",
            "allowable",
            "plate",
            "sandwich",
            "joint",
            "cutting",
            "micro",
            "springin",
            "asmade",
            "airfoil",
            "fitup",
            "systems");
    private static final List<String> FLOW =
            List.of("project", "plan", "record", "reading", "result", "audit", "planner", "forecast", "whatif", "card");

    /** Which package alone may use a library. */
    private static final Map<String, List<String>> HOMES = homes();

    private static Map<String, List<String>> homes() {
        Map<String, List<String>> h = new LinkedHashMap<>();
        h.put("org.hipparchus..", List.of("fayline.basis.numeric.."));
        h.put("org.ejml..", List.of("fayline.basis.numeric.."));
        h.put("org.locationtech.jts..", List.of("fayline.basis.geometry.."));
        h.put("com.google.ortools..", List.of("fayline.solver.."));
        h.put("java.sql..", List.of("fayline.store.sql.."));
        h.put("org.flywaydb..", List.of("fayline.store.sql.."));
        h.put("com.zaxxer..", List.of("fayline.store.sql.."));
        h.put("org.jooq..", List.of("fayline.store.sql.."));
        h.put("org.bouncycastle..", List.of("fayline.store.file.trust.."));
        h.put("com.password4j..", List.of("fayline.app.usecase.people.."));
        h.put("io.github.bucket4j..", List.of("fayline.app.usecase.people.."));
        h.put("com.nulabinc..", List.of("fayline.app.usecase.people.."));
        h.put("org.snakeyaml..", List.of("fayline.store.file.."));
        h.put("org.apache.commons.csv..", List.of("fayline.store.file.."));
        h.put("org.apache.poi..", List.of("fayline.store.file.table.."));
        h.put("net.fortuna..", List.of("fayline.store.file.."));
        h.put("io.javalin..", List.of("fayline.app.web.."));
        h.put("org.eclipse.jetty..", List.of("fayline.app.web.."));
        h.put("gg.jte..", List.of("fayline.app.web..", "gg.jte.generated..", "fayline.app.pdf.."));
        h.put("com.openhtmltopdf..", List.of("fayline.app.pdf.."));
        h.put("org.apache.pdfbox..", List.of("fayline.app.pdf.."));
        h.put("com.google.zxing..", List.of("fayline.app.drawing..", "fayline.app.pdf.."));
        h.put("javax.imageio..", List.of("fayline.store.file.picture.."));
        h.put("picocli..", List.of("fayline.app.cli.."));
        return h;
    }

    private static ArchRule picture() {
        return classes()
                .that(resideInAnyPackage("fayline.."))
                .should(adhereToPlantUmlDiagram(puml(), consideringOnlyDependenciesInDiagram()));
    }

    private static Path puml() {
        Path here = Path.of("").toAbsolutePath();
        Path found = here.resolve("docs/architecture.puml");
        return Files.exists(found) ? found : here.getParent().resolve("docs/architecture.puml");
    }

    private static ArchRule engineIsPure() {
        return noClasses()
                .that()
                .resideInAnyPackage(ENGINE)
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.net..",
                                "java.sql..",
                                "javax..",
                                "java.awt..",
                                "org.slf4j..",
                                "com.fasterxml..")
                        .and(JavaClass.Predicates.equivalentTo(java.io.Serializable.class)
                                .negate()));
    }

    private static ArchRule engineKnowsNoClock() {
        return noClasses()
                .that()
                .resideInAnyPackage(ENGINE)
                .should()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.LocalDateTime.class, "now")
                .orShould()
                .callMethod(java.time.ZonedDateTime.class, "now")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(java.time.ZoneId.class, "systemDefault")
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callConstructor(java.util.Random.class)
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err");
    }

    private static ArchRule engineKeepsNoState() {
        return fields().that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(ENGINE)
                .and()
                .areStatic()
                .should()
                .beFinal();
    }

    private static ArchRule plannerAndAuditorAreStrangers() {
        return noClasses()
                .that()
                .resideInAPackage("fayline.flow.planner..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("fayline.flow.audit..");
    }

    private static ArchRule auditorAndPlannerAreStrangers() {
        return noClasses()
                .that()
                .resideInAPackage("fayline.flow.audit..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("fayline.flow.planner..");
    }

    private static ArchRule solverDoesNotSeeTheAuditor() {
        return noClasses()
                .that()
                .resideInAPackage("fayline.solver..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("fayline.flow.audit..");
    }

    private static ArchRule onlyResultsAndUseCasesCalculate() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(
                        "fayline.flow.result..", "fayline.app.usecase..", "fayline.method..", "fayline.basis..")
                .should()
                .dependOnClassesThat()
                .haveSimpleNameEndingWith("Calculator");
    }

    private static List<ArchRule> leftward(String parent, List<String> order) {
        List<ArchRule> rules = new ArrayList<>();
        for (int i = 0; i < order.size() - 1; i++) {
            String[] right = order.subList(i + 1, order.size()).stream()
                    .map(p -> "fayline." + parent + "." + p + "..")
                    .toArray(String[]::new);
            rules.add(noClasses()
                    .that()
                    .resideInAPackage("fayline." + parent + "." + order.get(i) + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(right)
                    .allowEmptyShould(true));
        }
        return rules;
    }

    private static List<ArchRule> homeRules() {
        List<ArchRule> rules = new ArrayList<>();
        HOMES.forEach((library, rooms) -> rules.add(noClasses()
                .that(resideInAnyPackage("fayline..")
                        .and(com.tngtech.archunit.base.DescribedPredicate.not(
                                resideInAnyPackage(rooms.toArray(String[]::new)))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)));
        return rules;
    }

    private static Map<String, ArchRule> rules() {
        Map<String, ArchRule> r = new LinkedHashMap<>();
        r.put("the picture in docs/architecture.puml", picture());
        r.put("engine is pure", engineIsPure());
        r.put("engine knows no clock, chance, locale or console", engineKnowsNoClock());
        r.put("engine keeps no mutable static state", engineKeepsNoState());
        r.put("planner does not see auditor", plannerAndAuditorAreStrangers());
        r.put("auditor does not see planner", auditorAndPlannerAreStrangers());
        r.put("solver does not see auditor", solverDoesNotSeeTheAuditor());
        r.put("only results and use cases call calculators", onlyResultsAndUseCasesCalculate());
        r.put("no package cycle", slices().matching("fayline.(**)").should().beFreeOfCycles());
        int n = 0;
        for (ArchRule rule : leftward("basis", BASIS)) {
            r.put("basis looks leftward only, " + BASIS.get(n++), rule);
        }
        n = 0;
        for (ArchRule rule : leftward("method", METHOD)) {
            r.put("method looks leftward only, " + METHOD.get(n++), rule);
        }
        n = 0;
        for (ArchRule rule : leftward("flow", FLOW)) {
            r.put("flow looks leftward only, " + FLOW.get(n++), rule);
        }
        List<String> libraries = List.copyOf(HOMES.keySet());
        n = 0;
        for (ArchRule rule : homeRules()) {
            r.put("home of " + libraries.get(n++), rule);
        }
        return r;
    }

    @TestFactory
    Stream<DynamicTest> should_hold_every_rule() {
        return rules().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(
                        e.getKey(), () -> e.getValue().allowEmptyShould(true).check(HOUSE)));
    }

    @Test
    void should_import_the_whole_house() {
        assertThat(HOUSE.size()).isGreaterThan(LEAST_CLASSES);
    }

    @Test
    void should_have_classes_in_every_package_a_rule_names() throws Exception {
        Set<String> empty = new TreeSet<>();
        for (String name : Files.readAllLines(puml()).stream()
                .filter(l -> l.contains("<<"))
                .map(l -> l.replaceAll(".*<<(.*)>>.*", "$1"))
                .toList()) {
            if (HOUSE.that(resideInAnyPackage(name)).isEmpty()) {
                empty.add(name);
            }
        }
        for (String name : List.of("fayline.flow.planner..", "fayline.flow.audit..", "fayline.flow.result..")) {
            if (HOUSE.that(resideInAnyPackage(name)).isEmpty()) {
                empty.add(name);
            }
        }
        assertThat(empty).isEmpty();
    }

    @Test
    void should_know_every_package_of_basis_method_and_flow() {
        Set<String> unknown = new TreeSet<>();
        for (JavaClass c : HOUSE) {
            String[] p = c.getPackageName().split("\\.");
            if (p.length > 2) {
                List<String> known = switch (p[1]) {
                    case "basis" -> BASIS;
                    case "method" -> METHOD;
                    case "flow" -> FLOW;
                    default -> List.of(p[2]);
                };
                if (!known.contains(p[2])) {
                    unknown.add(c.getPackageName());
                }
            }
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void should_have_a_page_for_every_package() {
        Set<String> packages = new TreeSet<>();
        Set<String> pages = new TreeSet<>();
        for (JavaClass c : HOUSE) {
            if (c.getSimpleName().equals("package-info")) {
                pages.add(c.getPackageName());
            } else if (!c.getPackageName().contains("jooq")) {
                packages.add(c.getPackageName());
            }
        }
        packages.removeAll(pages);
        assertThat(packages).isEmpty();
    }

    @Test
    void should_keep_values_final() {
        Set<String> open = new TreeSet<>();
        for (JavaClass c : HOUSE.that(resideInAnyPackage(ENGINE))) {
            boolean closed = c.isInterface()
                    || c.isEnum()
                    || c.getModifiers().contains(JavaModifier.FINAL)
                    || c.getModifiers().contains(JavaModifier.ABSTRACT)
                    || c.isAnonymousClass()
                    || c.getEnclosingClass().map(JavaClass::isEnum).orElse(false);
            if (!closed) {
                open.add(c.getName());
            }
        }
        assertThat(open).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> should_catch_a_planted_breach() {
        Map<String, ArchRule> r = rules();
        return Stream.of(
                        "the picture in docs/architecture.puml",
                        "engine is pure",
                        "engine knows no clock, chance, locale or console",
                        "engine keeps no mutable static state",
                        "planner does not see auditor",
                        "home of java.sql..",
                        "home of picocli..")
                .map(name -> DynamicTest.dynamicTest(
                        name,
                        () -> assertThat(r.get(name).evaluate(BREACHES).hasViolation())
                                .isTrue()));
    }

    @Test
    void should_find_the_planted_breaches() {
        assertThat(BREACHES.that(alwaysTrue())).isNotEmpty();
    }
}
