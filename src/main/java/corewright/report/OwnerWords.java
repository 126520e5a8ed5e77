package corewright.report;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.RegionDecision;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Readings;
import corewright.survey.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
        if (regions.isEmpty()) {
            return "All of the " + Wording.known(Units.squareMetres(deck)) + " m² read is more probably sound than not."
                    + unread(faces);
        }
        int told = Math.min(most, regions.size());
        String places = regions.stream()
                .limit(told)
                .map(r -> " " + place(assessment, r))
                .collect(Collectors.joining());
        int rest = regions.size() - told;
        double deckM2 = Units.squareMetres(deck);
        return Wording.known(Units.squareMetres(damaged)) + " of " + Wording.known(deckM2) + " m² is not sound."
                + places
                + (rest == 0
                        ? ""
                        : " " + Wording.sentence(Wording.count(rest, "other place")) + " " + (rest == 1 ? "is" : "are")
                                + " in the table on the next page.");
    }

    /** What nobody can say anything of, with the reasons. */
    static String unread(List<FaceDamage> faces) {
        Map<String, Integer> reasons = new LinkedHashMap<>();
        faces.forEach(f -> f.undecided().forEach(u -> reasons.merge(u.why(), 1, Integer::sum)));
        if (reasons.isEmpty()) {
            return "";
        }
        double area = faces.stream()
                .flatMap(f -> f.undecided().stream())
                .mapToDouble(u -> u.area().getArea())
                .sum();
        return " Over " + Wording.area(area) + " it is not decided yet: "
                + reasons.keySet().stream().limit(2).map(Prose::plain).collect(Collectors.joining(" "));
    }

    private static String place(Assessment assessment, Region region) {
        Face face = assessment.survey().face(region.face());
        String where = Wording.sentence(Prose.plain(Places.of(face, region.likely())));
        if (assessment.damage().faces().size() > 1) {
            where = "On " + Prose.plain(Places.named(face.name())) + " " + lower(where);
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

    /**
     * Damaged area over all faces: the medians and their distances to the ends added up in squares, faces being
     * estimated apart.
     */
    static Quantiles damaged(Assessment assessment) {
        double middle = 0;
        double below = 0;
        double above = 0;
        for (FaceDamage face : assessment.damage().faces()) {
            Quantiles q = face.damagedMm2();
            middle += q.p50();
            below += (q.p50() - q.p10()) * (q.p50() - q.p10());
            above += (q.p90() - q.p50()) * (q.p90() - q.p50());
        }
        return new Quantiles(Math.max(0, middle - Math.sqrt(below)), middle, middle + Math.sqrt(above));
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

    /** How edges are to be read, what is open, and what was doubted. */
    static String doubt(Assessment assessment) {
        String edges =
                "A solid edge on the plan means more probable than not; a broken edge means damage there cannot be"
                        + " ruled out.";
        Map<String, Long> doubted = assessment.findings().stream()
                .filter(f -> f.severity() != Finding.Severity.HINT)
                .collect(Collectors.groupingBy(Finding::subject, LinkedHashMap::new, Collectors.counting()));
        if (doubted.isEmpty()) {
            return edges;
        }
        List<String> named = doubted.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .limit(3)
                .map(e -> Prose.plain(e.getKey()) + (e.getValue() > 1 ? " (" + e.getValue() + ")" : ""))
                .toList();
        return edges + " Doubts: " + String.join(", ", named) + (doubted.size() > 3 ? " and others" : "")
                + "; each is listed with its reason in findings.csv.";
    }

    /** What the owner should do before anything else, gravest first. */
    static String now(Assessment assessment) {
        List<String> steps = new ArrayList<>();
        List<Region> regions = assessment.damage().regions();
        for (Region region : regions) {
            if (assessment.decision().on(region.id()).architect()) {
                Face face = assessment.survey().face(region.face());
                String load = Places.load(face, region.likely())
                        .map(f -> Places.named(f.name()))
                        .orElse("whatever stands " + Places.of(face, region.likely()));
                steps.add("Keep load off " + Prose.plain(load) + " until a naval architect or surveyor has judged "
                        + region.id() + ".");
            }
        }
        proofs(assessment.decision().regions()).ifPresent(steps::add);
        if (regions.stream().anyMatch(Region::wet)) {
            steps.add("Keep water out: cover the deck until the leaks are stopped.");
        }
        if (!assessment.next().isEmpty()) {
            steps.add(readings(assessment.next()));
        }
        return steps.isEmpty() ? "Nothing is pressing. Read the deck again in a year." : String.join(" ", steps);
    }

    /** One proof in its own words; several by their regions, since each stands in its row of the table. */
    private static Optional<String> proofs(List<RegionDecision> decisions) {
        List<RegionDecision> unproven =
                decisions.stream().filter(d -> d.firstStep() != null).toList();
        if (unproven.size() > 1) {
            List<String> ids = unproven.stream().map(RegionDecision::region).toList();
            return Optional.of("Before any work on " + Wording.list(ids)
                    + ", have the state of the core proven as the table on page 2 says.");
        }
        return unproven.stream()
                .map(d -> "Before any work on " + d.region() + ": "
                        + lower(Prose.plain(Objects.requireNonNull(d.firstStep()))))
                .findFirst();
    }

    private static String readings(List<NextReading> next) {
        boolean probes = next.stream().anyMatch(n -> n.kind() == NextReading.Kind.PROBE);
        int count = next.size();
        return (count == 1
                        ? "Have the place marked with a question tag read"
                        : "Have the " + Wording.count(count) + " places marked with question tags read")
                + ", taps first" + (probes ? ", a pilot hole only with your consent" : "")
                + (count == 1 ? ": it settles most of what is open." : ": they settle most of what is open.");
    }

    /** How it was seen, and who decides. */
    static String seen(Readings readings) {
        List<String> by = new ArrayList<>();
        if (!readings.moisture().isEmpty()) {
            by.add("moisture meter at " + Wording.count(readings.moisture().size(), "place"));
        }
        if (!readings.taps().isEmpty()) {
            by.add("hammer at " + Wording.count(readings.taps().size(), "place"));
        }
        if (!readings.probes().isEmpty()) {
            by.add(Wording.count(readings.probes().size(), "pilot hole"));
        }
        if (!readings.feelers().isEmpty()) {
            by.add(Wording.count(readings.feelers().size(), "feeler"));
        }
        if (!readings.plugs().isEmpty()) {
            by.add(Wording.count(readings.plugs().size(), "core plug"));
        }
        return "Seen by: " + String.join(", ", by) + ". A naval architect or surveyor decides where strength matters.";
    }

    /** What the costs stand on. */
    static String costs(Assessment assessment) {
        boolean standIn = assessment
                .survey()
                .settings()
                .costs()
                .equals(Settings.defaults().costs());
        String included = "Cost: yard work and materials, survey visits included; hauling out and tax are not. ";
        return included
                + (standIn
                        ? "The hours and rates are common practice, since the yard's own were not entered: ask a yard for its"
                                + " price."
                        : "The hours and rates are those entered in the survey.");
    }
}
