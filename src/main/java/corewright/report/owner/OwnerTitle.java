package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.assessment.Verdict;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.report.page.Prose;
import corewright.report.page.Wording;
import corewright.survey.Face;
import corewright.survey.Face.Posture;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The owner's title: the share that is damaged, the way out, and what still awaits another judgement. */
final class OwnerTitle {
    private OwnerTitle() {}

    static String of(Assessment assessment) {
        Verdict verdict = assessment.verdict();
        String first = Prose.plain(verdict.sentence());
        if (verdict.withheld()) {
            return first;
        }
        boolean sound = assessment.damage().regions().isEmpty();
        if (verdict.free()) {
            return sound ? nothing(assessment) : share(assessment) + " " + wayOut(assessment);
        }
        return first + (sound ? " No verdict is given on the rest." : " Damage was found. " + wayOut(assessment));
    }

    /** {@code the foredeck’s}. */
    static String possessive(String name) {
        String named = Prose.plain(name.toLowerCase(java.util.Locale.ROOT).startsWith("the ") ? name : "the " + name);
        return named + (named.endsWith("s") ? "’" : "’s");
    }

    private static String nothing(Assessment assessment) {
        List<FaceDamage> faces = assessment.damage().faces();
        String where = faces.size() == 1
                ? possessive(faces.get(0).face().name()) + " core"
                : "the core of the " + Wording.count(faces.size(), "face") + " read";
        int open = faces.stream().mapToInt(f -> f.undecidedAreas().size()).sum();
        String rest = open == 0
                ? ""
                : " " + Wording.sentence(Wording.count(open, "place")) + (open == 1 ? " is" : " are")
                        + " not decided yet.";
        return "No damage was found in " + where + "." + rest;
    }

    private static String share(Assessment assessment) {
        List<FaceDamage> faces = assessment.damage().faces();
        double deck = faces.stream().mapToDouble(FaceDamage::deckMm2).sum();
        double damaged = faces.stream().mapToDouble(OwnerTitle::damagedMm2).sum();
        FaceDamage worst = worst(assessment);
        String share = Wording.sentence(Wording.share(damaged / deck)) + " of ";
        if (faces.size() == 1) {
            return share + possessive(worst.face().name()) + " core is damaged.";
        }
        boolean only = damagedMm2(worst) >= damaged;
        return share + "the core of " + Wording.count(faces.size(), "face") + " is damaged, "
                + (only ? "all" : damagedMm2(worst) > damaged / 2 ? "most" : "the largest part") + " of it on "
                + PlaceWords.named(worst.face().name()) + ".";
    }

    /** Area drawn as damaged: all that is more probable than not. */
    static double damagedMm2(FaceDamage face) {
        return face.deckMm2() - face.areaMm2(Condition.SOUND);
    }

    /** The face with most damage. */
    static FaceDamage worst(Assessment assessment) {
        return assessment.damage().faces().stream()
                .max(Comparator.comparingDouble(OwnerTitle::damagedMm2))
                .orElseThrow();
    }

    private static String wayOut(Assessment assessment) {
        List<Region> regions = assessment.damage().regions();
        List<Region> loaded = regions.stream()
                .filter(r -> assessment.decision().on(r.id()).architect())
                .toList();
        int unproven = (int) assessment.decision().regions().stream()
                .filter(d -> d.firstStep() != null)
                .count();
        if (loaded.size() == regions.size()) {
            return "A naval architect or surveyor must judge it before any work.";
        }
        if (unproven == regions.size()) {
            return (unproven == 1 ? "A pilot hole decides" : "Pilot holes decide")
                    + " between filling it and cutting it out.";
        }
        return repair(assessment) + awaiting(assessment, loaded, unproven) + ".";
    }

    private static String repair(Assessment assessment) {
        Set<Method> methods = EnumSet.noneOf(Method.class);
        assessment.decision().regions().stream()
                .filter(d -> d.firstStep() == null)
                .forEach(d -> methods.add(d.method()));
        if (methods.equals(Set.of(Method.MONITOR))) {
            return "It can be left as it is and watched";
        }
        double opened = assessment.damage().regions().stream()
                .filter(r -> assessment.decision().on(r.id()).method() == Method.RECORE)
                .mapToDouble(r -> r.likely().getArea())
                .sum();
        double deck = assessment.damage().faces().stream()
                .mapToDouble(FaceDamage::deckMm2)
                .sum();
        if (opened > deck / 2) {
            return "Most of " + whole(assessment) + " needs a new core";
        }
        boolean repaired = methods.contains(Method.INJECT) || methods.contains(Method.RECORE);
        return "It can be " + (repaired ? "repaired" : "dried out") + " without renewing " + whole(assessment);
    }

    /** What would be renewed at the worst: the deck, where any face is one. */
    private static String whole(Assessment assessment) {
        List<Face> faces = assessment.survey().faces();
        boolean deck = faces.stream().anyMatch(f -> f.posture() == Posture.DECK);
        return deck ? "the deck" : faces.size() == 1 ? "the panel" : "the panels";
    }

    private static String awaiting(Assessment assessment, List<Region> loaded, int unproven) {
        if (loaded.size() == 1) {
            Region region = loaded.get(0);
            String place = PlaceWords.of(assessment.survey().face(region.face()), region.likely());
            return "; the place " + Prose.plain(place) + " awaits a naval architect";
        }
        if (!loaded.isEmpty()) {
            return "; " + Wording.count(loaded.size(), "place") + " under load await a naval architect";
        }
        if (unproven == 0) {
            return "";
        }
        return (unproven == 1 ? "; a pilot hole" : "; pilot holes") + " must first show how "
                + Wording.count(unproven, "place") + (unproven == 1 ? " is" : " are") + " to be treated";
    }
}
