package corewright;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.locationtech.jts.geom.Geometry;

/** The architecture: which package may use which, who owns which library, and that stages are pure. */
@AnalyzeClasses(packages = "corewright", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    /** Package → the only packages of ours it may use. Data flows down this list. Every package is on it. */
    private static final Map<String, List<String>> FLOW = flow();

    private static Map<String, List<String>> flow() {
        Map<String, List<String>> flow = new LinkedHashMap<>();
        flow.put("overlay", List.of());
        flow.put("reuse", List.of());
        flow.put("linear", List.of());
        flow.put("field", List.of("linear"));
        flow.put("contour", List.of("overlay"));
        flow.put("sandwich", List.of("overlay", "linear"));
        flow.put("survey", List.of());
        flow.put("intake", List.of("overlay", "survey"));
        flow.put("store", List.of("survey"));
        flow.put("damage", List.of("overlay", "reuse", "survey", "field", "contour"));
        flow.put("stiffness", List.of("overlay", "reuse", "survey", "damage", "sandwich"));
        flow.put("repair", List.of("overlay", "reuse", "survey", "damage", "stiffness", "linear", "contour"));
        flow.put("decision", List.of("overlay", "survey", "damage", "stiffness", "repair"));
        flow.put(
                "assessment",
                List.of(
                        "reuse",
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
                "comparison",
                List.of("overlay", "sandwich", "survey", "damage", "stiffness", "decision", "assessment"));
        flow.put(
                "drawing",
                List.of(
                        "overlay",
                        "survey",
                        "assessment",
                        "contour",
                        "sandwich",
                        "damage",
                        "stiffness",
                        "repair",
                        "decision"));
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
                        "comparison",
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

    /** Rooms of a package, in the order of the data: each uses only those before it, and the package itself all of them. */
    private static final Map<String, List<String>> ROOMS = Map.of(
            "sandwich",
            List.of("spec"),
            "survey",
            List.of("settings"),
            "intake",
            List.of("text", "yaml", "drawn"),
            "repair",
            List.of("plan", "mix", "pattern", "fill", "work"),
            "decision",
            List.of("drying"),
            "drawing",
            List.of("kit", "marks", "placing", "plates", "cards", "screen", "template"),
            "report",
            List.of("page", "data", "owner", "cards", "record", "template", "compare", "sheets"),
            "desktop",
            List.of(
                    "state",
                    "plan",
                    "slip",
                    "find",
                    "photos",
                    "sketch",
                    "touch",
                    "insight",
                    "resurvey",
                    "setup",
                    "imports",
                    "walk",
                    "decide",
                    "holes",
                    "work",
                    "stiffness",
                    "papers",
                    "owner"));

    /** So many files can still be seen at one look. */
    private static final int FILES_IN_A_ROOM = 45;

    @ArchTest
    static void roomsUseOnlyThoseBeforeThem(JavaClasses code) {
        ROOMS.forEach((house, rooms) -> {
            for (int i = 0; i < rooms.size(); i++) {
                List<String> later = new ArrayList<>();
                later.add("corewright." + house);
                rooms.subList(i + 1, rooms.size()).forEach(r -> later.add("corewright." + house + "." + r + ".."));
                forbid(List.of("corewright." + house + "." + rooms.get(i) + ".."), later.toArray(String[]::new))
                        .because("rooms of " + house + " in order: " + String.join(" → ", rooms))
                        .check(code);
            }
        });
    }

    @ArchTest
    static void everyRoomIsOnTheListAndSmallEnoughToSee(JavaClasses code) {
        Map<String, Long> files = new TreeMap<>();
        for (JavaClass type : code) {
            if (type.isTopLevelClass()) {
                files.merge(type.getPackageName(), 1L, Long::sum);
            }
        }
        List<String> strangers = files.keySet().stream()
                .filter(p -> p.chars().filter(c -> c == '.').count() > 1)
                .filter(p -> {
                    String[] parts = p.split("\\.");
                    return !ROOMS.getOrDefault(parts[1], List.of()).contains(parts[2]);
                })
                .toList();
        assertThat(strangers).as("rooms that are on no list").isEmpty();
        files.forEach((room, count) -> assertThat(count).as("files in " + room).isLessThanOrEqualTo(FILES_IN_A_ROOM));
    }

    @ArchTest
    static final ArchRule stagesArePure = forbid(
                    List.of(
                            "corewright.overlay..",
                            "corewright.reuse..",
                            "corewright.linear..",
                            "corewright.field..",
                            "corewright.contour..",
                            "corewright.sandwich..",
                            "corewright.survey..",
                            "corewright.damage..",
                            "corewright.stiffness..",
                            "corewright.repair..",
                            "corewright.decision..",
                            "corewright.assessment..",
                            "corewright.comparison.."),
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

    /** Overlays of the older kind fail where two lines nearly touch. */
    @ArchTest
    static final ArchRule overlaysGoThroughTheirDoor = noClasses()
            .that()
            .resideOutsideOfPackage("corewright.overlay")
            .should()
            .accessTargetWhere(target(owner(assignableTo(Geometry.class)))
                    .and(target(nameMatching("intersection|union|difference|symDifference"))))
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.locationtech.jts.operation.overlay..",
                    "org.locationtech.jts.operation.overlayng..",
                    "org.locationtech.jts.operation.union..");

    /** The entries of the stages, in the order of the chain: the whole chain stands in one method. */
    private static final List<String> STAGES = List.of(
            "corewright.damage.Damage.fit",
            "corewright.damage.Damage.follow",
            "corewright.stiffness.Stiffness.of",
            "corewright.repair.RepairPlanner.plan",
            "corewright.decision.Methods.of(corewright.survey.Survey",
            "corewright.repair.RepairPlanner.together",
            "corewright.decision.Treated.dried",
            "corewright.decision.Treated.advised",
            "corewright.stiffness.Stiffness.gains",
            "corewright.decision.Decider.decide",
            "corewright.repair.work.WorkDone.of");

    @ArchTest
    static void everyStageIsCalledOnceAndByTheAssessorAlone(JavaClasses code) {
        for (String stage : STAGES) {
            List<String> calls = code.stream()
                    .flatMap(c -> c.getCodeUnitAccessesFromSelf().stream())
                    .filter(a -> a.getTarget().getFullName().startsWith(stage))
                    .filter(a -> !a.getOriginOwner().equals(a.getTargetOwner()))
                    .map(a -> a.getOriginOwner().getName())
                    .toList();
            assertThat(calls).as(stage).containsExactly("corewright.assessment.Assessor");
        }
    }

    /** Types of one package that know each other, and why they may. */
    private static final Map<Set<String>, String> KNOW_EACH_OTHER = Map.ofEntries(
            entry(
                    Set.of("Reading", "Moisture", "Tap", "Probe", "Feeler", "Plug", "SurfaceTemperature"),
                    "a sealed type and its kinds"),
            entry(
                    Set.of(
                            "Corewright",
                            "CheckCommand",
                            "CompareCommand",
                            "ContourCommand",
                            "ConvertCommand",
                            "DesktopCommand",
                            "EstimateCommand",
                            "PanelCommand",
                            "RunCommand",
                            "SheetsCommand"),
                    "the tree of commands, whose leaves reach its options"),
            entry(
                    Set.of(
                            "Around",
                            "Cholesky",
                            "Climb",
                            "Compliance",
                            "Condensation",
                            "Eliminated",
                            "PairProducts",
                            "Paths",
                            "SelectedInverse"),
                    "what is eliminated, and entries of the inverse, are read from the factor's own fronts"),
            entry(
                    Set.of(
                            "CondensedCells",
                            "Contact",
                            "BondedSkins",
                            "LargeDeflection",
                            "PanelPull",
                            "PanelModel",
                            "Response",
                            "Stresses"),
                    "a model and what is solved with it"),
            entry(
                    Set.of("Assessor", "Assessed", "Assessment", "Partial", "Progress"),
                    "what is assessed, whole and in part, and who is told"),
            entry(
                    Set.of("AreaPull", "Foot", "FootLikeness", "FootLoadMap", "FootLoads", "PanelRatios"),
                    "a map of feet, one foot of it, and what is foretold between feet"),
            entry(Set.of("ImportNote", "Table"), "a note on a row and the table it is kept in"),
            entry(Set.of("Schema", "Strangers"), "a file's tables are compared with those that would be made"),
            entry(Set.of("FolderWriter", "SurveyYamlText"), "a folder and its one page of settings"),
            entry(Set.of("DayPlanner", "Schedule"), "a day and how it is laid out"),
            entry(Set.of("Outlook", "Patches", "Softening"), "what a panel is made of, by outlook"),
            entry(Set.of("CsvGuess", "CsvImport"), "an import and the choice it guesses"));

    @ArchTest
    static void noTypesKnowEachOtherButThoseThatAreListed(JavaClasses code) {
        Map<String, Set<String>> uses = new TreeMap<>();
        for (JavaClass type : code) {
            Set<String> used = uses.computeIfAbsent(outer(type.getName()), n -> new TreeSet<>());
            type.getDirectDependenciesFromSelf().stream()
                    .map(d -> d.getTargetClass())
                    .filter(t -> t.getPackageName().equals(type.getPackageName()))
                    .map(t -> outer(t.getName()))
                    .filter(t -> !t.equals(outer(type.getName())))
                    .forEach(used::add);
        }
        List<String> circles = new ArrayList<>();
        for (String type : uses.keySet()) {
            Set<String> circle = new TreeSet<>();
            for (String other : reached(type, uses)) {
                if (reached(other, uses).contains(type)) {
                    circle.add(other.substring(other.lastIndexOf('.') + 1));
                }
            }
            if (!circle.isEmpty() && KNOW_EACH_OTHER.keySet().stream().noneMatch(k -> k.containsAll(circle))) {
                circles.add(type + " in " + circle);
            }
        }
        assertThat(circles).as("types that know each other").isEmpty();
    }

    private static String outer(String name) {
        int nested = name.indexOf('$');
        return nested < 0 ? name : name.substring(0, nested);
    }

    private static Set<String> reached(String from, Map<String, Set<String>> uses) {
        Set<String> reached = new TreeSet<>();
        ArrayDeque<String> open = new ArrayDeque<>(uses.getOrDefault(from, Set.of()));
        while (!open.isEmpty()) {
            String next = open.pop();
            if (reached.add(next)) {
                open.addAll(uses.getOrDefault(next, Set.of()));
            }
        }
        return reached;
    }

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
