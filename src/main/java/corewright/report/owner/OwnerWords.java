package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.assessment.Verdict;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.damage.Region;
import corewright.damage.Undecided;
import corewright.decision.Choice;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.report.page.Conversions;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Face;
import corewright.survey.Readings;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the owner's page says, in the owner's words. Nothing is drawn here. */
final class OwnerWords {
    private OwnerWords() {}

    /**
     * What is wrong: areas first, then the gravest places.
     *
     * @param most places told one by one; the others are counted and stand in the table
     */
    static String wrong(Assessment assessment, int most) {
        List<FaceDamage> faces = assessment.damage().faces();
        double deck = faces.stream().mapToDouble(FaceDamage::deckMm2).sum();
        double damaged = faces.stream().mapToDouble(OwnerTitle::damagedMm2).sum();
        List<Region> regions = assessment.damage().regions();
        Verdict verdict = assessment.verdict();
        String all = Wording.known(Conversions.squareMetres(deck)) + " m²";
        if (verdict.withheld()) {
            return "Of the " + all + " nothing is said yet, good or bad.";
        }
        if (regions.isEmpty()) {
            return (verdict.free()
                            ? "All of the " + all + " read is more probably sound than not."
                            : "Of the " + all + " nothing is said where nothing was read.")
                    + unread(faces);
        }
        int told = Math.min(most, regions.size());
        String places = regions.stream()
                .limit(told)
                .map(r -> " " + place(assessment, r))
                .collect(Collectors.joining());
        int rest = regions.size() - told;
        double deckM2 = Conversions.squareMetres(deck);
        return (faces.size() == 1 ? "On the plan " : "On the plans ") + Wording.known(Conversions.squareMetres(damaged))
                + " of " + Wording.known(deckM2) + " m² is more probably damaged than not."
                + places
                + (rest == 0
                        ? ""
                        : " " + Wording.sentence(Wording.count(rest, "other place")) + " " + (rest == 1 ? "is" : "are")
                                + " in the table on the following pages.");
    }

    /** What the readings do not settle, and which question it is. */
    static String unread(List<FaceDamage> faces) {
        List<Undecided> open =
                faces.stream().flatMap(f -> f.undecided().stream()).toList();
        if (open.isEmpty()) {
            return "";
        }
        double area = undecidedMm2(faces);
        String reasons =
                open.stream().map(u -> Prose.plain(u.why())).distinct().limit(3).collect(Collectors.joining("; "));
        return " Not decided yet, over " + Wording.area(area) + ": " + reasons + (reasons.endsWith(".") ? "" : ".");
    }

    /** Area where any question is open: a place where two are open counts once. */
    static double undecidedMm2(List<FaceDamage> faces) {
        return faces.stream().mapToDouble(FaceDamage::undecidedMm2).sum();
    }

    private static String place(Assessment assessment, Region region) {
        Face face = assessment.survey().face(region.face());
        String where = Wording.sentence(Prose.plain(PlaceWords.of(face, region.likely())));
        if (assessment.damage().faces().size() > 1) {
            where = "On " + Prose.plain(PlaceWords.named(face.name())) + " " + lower(where);
        }
        String area = Wording.area(region.likely().getArea());
        String what =
                switch (region.condition()) {
                    case VOID ->
                        "the skin stands over an empty space of " + area + (region.wet() ? ", and there is water" : "");
                    case WET_DELAMINATED -> "the core is wet and the skin has come loose over " + area;
                    case DELAMINATED -> "the skin has come loose over " + area;
                    case WET -> "the core is wet but still bonded over " + area;
                    case SOUND -> "nothing is wrong over " + area;
                };
        return where + " " + what + " (" + region.id() + ").";
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + words.substring(1);
    }

    /** Why there are no litres, and what would give them; empty where they were measured. */
    static String unmeasured(Assessment assessment) {
        return assessment.survey().readings().coreSeen()
                ? ""
                : " How much space is empty is not known: nobody has looked under the skin. A pilot hole where it sounds hollow"
                        + " would tell.";
    }

    /** What a condition is called beside its pattern. */
    static String briefly(Condition condition) {
        return switch (condition) {
            case SOUND -> "sound";
            case WET -> "wet";
            case DELAMINATED -> "skin loose";
            case WET_DELAMINATED -> "wet and loose";
            case VOID -> "empty space";
        };
    }

    /** What a condition is called in the owner's table. */
    static String plainly(Condition condition) {
        return switch (condition) {
            case SOUND -> "sound";
            case WET -> "wet, still bonded";
            case DELAMINATED -> "skin loose";
            case WET_DELAMINATED -> "wet and loose";
            case VOID -> "empty space under the skin";
        };
    }

    /** How edges are to be read, what was doubted and what that does to the plan. */
    static String doubt(Assessment assessment) {
        Verdict verdict = assessment.verdict();
        if (verdict.withheld()) {
            return verdict.doubts().isEmpty()
                    ? "Nothing is known where nothing was read."
                    : "Nothing is sure while the question at the head of this page is open.";
        }
        return "Solid edge on the plan: more probable than not. Broken edge: damage cannot be ruled out."
                + unmeasured(assessment)
                + OwnerDoubts.of(assessment.findings());
    }

    /** What the owner should do before anything else, gravest first. */
    static String now(Assessment assessment) {
        return String.join(" ", steps(assessment));
    }

    /** The same step by step. */
    static List<String> steps(Assessment assessment) {
        Verdict verdict = assessment.verdict();
        if (verdict.withheld()) {
            return List.of((verdict.doubts().isEmpty()
                            ? "Have the deck read with a meter and tapped, in a grid, and calculate again."
                            : "Settle the question at the head of this page and calculate again.")
                    + " Decide nothing on the deck before that.");
        }
        List<String> steps = new ArrayList<>();
        List<Region> regions = assessment.damage().regions();
        steps.addAll(OwnerStops.sentences(assessment));
        loads(assessment).ifPresent(steps::add);
        proofs(assessment.decision().regions()).ifPresent(steps::add);
        if (regions.stream().anyMatch(Region::wet)) {
            steps.add("Keep water out: cover it until the leaks are stopped.");
        }
        List<NextReading> tags =
                OwnerMap.tags(assessment, OwnerTitle.worst(assessment).face().name());
        if (!tags.isEmpty()) {
            steps.add(readings(tags));
        }
        if (!verdict.free()) {
            steps.add("Have read what was not read.");
        }
        return steps.isEmpty() ? List.of("Nothing is pressing. Read the deck again in a year.") : steps;
    }

    /** One sentence for all places under load, however many. */
    private static Optional<String> loads(Assessment assessment) {
        Set<String> loads = new LinkedHashSet<>();
        List<String> ids = new ArrayList<>();
        for (Region region : assessment.damage().regions()) {
            if (assessment.decision().on(region.id()).architect()) {
                Face face = assessment.survey().face(region.face());
                loads.add(PlaceWords.load(face, region.likely())
                        .map(f -> PlaceWords.named(f.name()))
                        .orElse("whatever stands " + PlaceWords.of(face, region.likely())));
                ids.add(region.id());
            }
        }
        return ids.isEmpty()
                ? Optional.empty()
                : Optional.of("Keep load off " + Prose.plain(Wording.list(List.copyOf(loads)))
                        + " until a naval architect or surveyor has judged " + Wording.list(ids) + ".");
    }

    /** One proof in its own words; several by their regions, since each stands in its row of the table. */
    private static Optional<String> proofs(List<RegionDecision> decisions) {
        List<RegionDecision> unproven =
                decisions.stream().filter(d -> d.firstStep() != null).toList();
        if (unproven.size() > 1) {
            List<String> ids = unproven.stream().map(RegionDecision::region).toList();
            return Optional.of("Before any work on " + Wording.list(ids)
                    + ", have the state of the core proven as the table on the following pages says.");
        }
        return unproven.stream()
                .map(d -> "Before any work on " + d.region() + ": "
                        + lower(Prose.plain(Objects.requireNonNull(d.firstStep()))))
                .findFirst();
    }

    private static String readings(List<NextReading> tags) {
        boolean probes = tags.stream().anyMatch(n -> n.kind() == NextReading.Kind.PROBE);
        int count = tags.size();
        return (count == 1
                        ? "Have the place marked with a question tag read"
                        : "Have the " + Wording.count(count) + " places marked with question tags read")
                + ", taps first" + (probes ? ", a pilot hole only with your consent" : "")
                + (count == 1 ? ": it tells most." : ": they tell most.");
    }

    /** Who decides, and how it was seen: the foot of every page. */
    static String seen(Readings readings) {
        List<String> by = new ArrayList<>();
        add(by, readings.moisture().size(), "meter reading");
        add(by, readings.taps().size(), "tap");
        add(by, readings.probes().size(), "pilot hole");
        add(by, readings.feelers().size(), "feeler");
        add(by, readings.plugs().size(), "core plug");
        String seen = by.isEmpty() ? "" : "\nSeen: " + String.join(", ", by) + ".";
        return "Where strength matters, a naval architect or surveyor decides; local rules come first." + seen;
    }

    private static void add(List<String> by, int count, String thing) {
        if (count > 0) {
            by.add(Wording.count(count, thing));
        }
    }

    /** What becomes of it if nothing is done; empty where nothing is wrong or no verdict is given. */
    static String left(Assessment assessment) {
        List<Choice> choices = assessment.decision().choices();
        if (assessment.verdict().withheld()
                || choices.isEmpty()
                || assessment.damage().regions().isEmpty()) {
            return "";
        }
        return Prose.plain(choices.get(0).toKnow()) + " How fast, nobody can tell from one survey: read it again.";
    }

    /** What is advised, why, and what has to come before it; empty where nothing can be advised. */
    static String recommended(Assessment assessment) {
        return assessment.decision().choices().stream()
                .filter(c -> c.advised() && !assessment.verdict().withheld())
                .findFirst()
                .map(c -> Prose.bold(Prose.plain(c.title()) + ".") + " " + OwnerStops.brief(assessment)
                        + decides(assessment))
                .orElse("");
    }

    /** Whose decision it is. */
    static String decides(Assessment assessment) {
        if (assessment.verdict().withheld()) {
            return "Nobody should decide on this deck before a verdict is given.";
        }
        List<String> loaded = assessment.decision().regions().stream()
                .filter(RegionDecision::architect)
                .map(RegionDecision::region)
                .toList();
        String yours = "which choice it is to be, you do, with your yard; this report advises.";
        return loaded.isEmpty()
                ? Wording.sentence(yours)
                : "On " + Wording.list(loaded)
                        + " a naval architect or surveyor decides first, since load is carried there; " + yours;
    }

    /** What the costs stand on. */
    static String costs(Assessment assessment) {
        if (assessment.verdict().withheld()) {
            return "";
        }
        boolean standIn = assessment
                .survey()
                .settings()
                .costs()
                .equals(Settings.defaults().costs());
        String stiffness = ChoiceTable.stiffness(assessment) ? stiffness(assessment.stiffness()) : "";
        return "Yard work, materials and survey visits; hauling out and tax are not included. "
                + (standIn ? "Hours and rates are common practice: ask your yard." : "Hours and rates from the survey.")
                + stiffness;
    }

    /** Which panel the table's figures are of, and which others to look at. */
    private static String stiffness(StiffnessMap map) {
        String words = " * Of the panel " + map.worst().map(OwnerWords::name).orElse("that lost most")
                + ", which lost most, as built = 100; the range is that of how far and how deep the damage may go.";
        words += map.leastAfterPlan()
                .map(p -> " After what is advised " + name(p) + " has least, "
                        + Figures.fixed(100 * p.in(State.AFTER_PLAN).ofAsBuilt().p50(), 0) + " of 100.")
                .orElse("");
        return words
                + map.mostLoaded()
                        .map(p -> " The survey's loads ask most of " + name(p) + ".")
                        .orElse("");
    }

    private static String name(PanelStiffness panel) {
        return Prose.plain(panel.panel().name());
    }
}
