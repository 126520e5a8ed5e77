package corewright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.Map.entry;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The architecture: which package may use which, who owns which library, and that stages are pure. */
@AnalyzeClasses(packages = "corewright", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    /** Package → the only packages of ours it may use. Data flows down this list. Every package is on it. */
    private static final Map<String, List<String>> FLOW = flow();

    private static Map<String, List<String>> flow() {
        Map<String, List<String>> flow = new LinkedHashMap<>();
        flow.put("linear", List.of());
        flow.put("field", List.of("linear"));
        flow.put("contour", List.of());
        flow.put("sandwich", List.of("linear"));
        flow.put("survey", List.of());
        flow.put("intake", List.of("survey"));
        flow.put("store", List.of("survey"));
        flow.put("damage", List.of("survey", "field", "contour"));
        flow.put("stiffness", List.of("survey", "damage", "sandwich"));
        flow.put("repair", List.of("survey", "damage", "stiffness", "linear", "contour"));
        flow.put("decision", List.of("survey", "damage", "stiffness", "repair"));
        flow.put(
                "assessment",
                List.of(
                        "linear",
                        "field",
                        "contour",
                        "sandwich",
                        "survey",
                        "damage",
                        "stiffness",
                        "repair",
                        "decision"));
        flow.put(
                "drawing",
                List.of("survey", "assessment", "contour", "sandwich", "damage", "stiffness", "repair", "decision"));
        flow.put(
                "report",
                List.of(
                        "survey",
                        "store",
                        "assessment",
                        "contour",
                        "field",
                        "sandwich",
                        "damage",
                        "stiffness",
                        "repair",
                        "decision",
                        "drawing"));
        List<String> shell = new ArrayList<>(flow.keySet());
        flow.put("cli", shell);
        flow.put("desktop", shell);
        return flow;
    }

    /** Library → the only packages that may use it. JTS is shared vocabulary. */
    private static final Map<String, List<String>> OWNERS = Map.ofEntries(
            entry("javafx..", List.of("desktop")),
            entry("picocli..", List.of("cli")),
            entry("org.apache.pdfbox..", List.of("report")),
            entry("de.rototor..", List.of("report")),
            entry("org.apache.batik.parser..", List.of("intake")),
            entry("org.apache.batik.svggen..", List.of("report")),
            entry("org.apache.commons.csv..", List.of("intake", "store", "report")),
            entry("com.fasterxml.jackson..", List.of("intake", "store", "report", "cli")),
            entry("org.yaml..", List.of("intake", "store")),
            entry("org.sqlite..", List.of("store")),
            entry("java.sql..", List.of("store")),
            entry("java.awt..", List.of("drawing", "report", "desktop", "intake")));

    @ArchTest
    static void packagesUseOnlyThoseInTheirRow(JavaClasses code) {
        FLOW.forEach((user, used) -> {
            String[] others = FLOW.keySet().stream()
                    .filter(p -> !p.equals(user) && !used.contains(p))
                    .map(p -> "corewright." + p + "..")
                    .toArray(String[]::new);
            forbid(List.of("corewright." + user + ".."), others)
                    .because("data flows " + String.join(" → ", FLOW.keySet()))
                    .check(code);
        });
    }

    @ArchTest
    static void librariesStayWithTheirOwners(JavaClasses code) {
        OWNERS.forEach((library, owners) -> {
            List<String> rest = FLOW.keySet().stream()
                    .filter(p -> !owners.contains(p))
                    .map(p -> "corewright." + p + "..")
                    .toList();
            forbid(rest, library)
                    .because(library + " belongs to " + String.join(", ", owners))
                    .check(code);
        });
    }

    @ArchTest
    static final ArchRule everyPackageIsOnTheList = classes()
            .that()
            .resideOutsideOfPackage("corewright")
            .should()
            .resideInAnyPackage(
                    FLOW.keySet().stream().map(p -> "corewright." + p + "..").toArray(String[]::new));

    @ArchTest
    static final ArchRule stagesArePure = forbid(
                    List.of(
                            "corewright.linear..",
                            "corewright.field..",
                            "corewright.contour..",
                            "corewright.sandwich..",
                            "corewright.survey..",
                            "corewright.damage..",
                            "corewright.stiffness..",
                            "corewright.repair..",
                            "corewright.decision..",
                            "corewright.assessment.."),
                    "java.io..",
                    "java.nio..",
                    "java.net..",
                    "java.util.logging..")
            .because("arguments in, record out: the shells own files, clock and logging");

    @ArchTest
    static final ArchRule stagesKnowNoClock = noClasses()
            .that()
            .resideOutsideOfPackages("corewright.cli..", "corewright.desktop..")
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(Math.class, "random");

    private static ArchRule forbid(List<String> users, String... used) {
        return noClasses()
                .that()
                .resideInAnyPackage(users.toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(used)
                .allowEmptyShould(true);
    }
}
