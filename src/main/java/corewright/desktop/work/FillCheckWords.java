package corewright.desktop.work;

import corewright.assessment.Assessment;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.repair.plan.SecondShot;
import corewright.repair.work.CuredFill;
import corewright.repair.work.FillCheck;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;

/** What warmth and taps say of a fill, in sentences. */
final class FillCheckWords {
    private FillCheckWords() {}

    /** @param fresh the figures belong to the survey as it is */
    static List<String> of(Assessment found, String region, boolean fresh, Units units) {
        List<String> lines = new ArrayList<>();
        if (fresh && found.plans().injection(region).isEmpty()) {
            return List.of("Injection is not decided for this place, so there is no fill of it to check. What is noted"
                    + " here is kept and counts once it is.");
        }
        if (!fresh) {
            lines.add("What was noted last follows when the calculation is through.");
        }
        warmth(found, region, lines);
        for (CuredFill fill : of(found, region)) {
            lines.add(Figures.fixed(100 * fill.tappedShare(), 0) + " of 100 parts of the fill were tapped; "
                    + (fill.tappedShare() < CuredFill.PROVEN_SHARE
                            ? "it is proven from " + Math.round(100 * CuredFill.PROVEN_SHARE) + "."
                            : fill.shots().isEmpty() ? "nothing is hollow: it is proven." : "what is hollow follows."));
            fill.shots().forEach(s -> lines.add(shot(found, s, units)));
        }
        if (lines.isEmpty()) {
            lines.add("Nothing was felt or tapped yet.");
        }
        return lines;
    }

    static List<CuredFill> of(Assessment found, String region) {
        return found.work().cured().stream()
                .filter(c -> found.plans()
                        .injection(region)
                        .filter(p -> p.part(c.region()).isPresent())
                        .isPresent())
                .toList();
    }

    static List<FillCheck.Place> warmth(Assessment found, String region) {
        return found.work().progress().stream()
                .filter(p -> found.plans()
                        .injection(region)
                        .filter(i -> i.part(p.region()).isPresent())
                        .isPresent())
                .flatMap(p -> p.warmth().stream())
                .toList();
    }

    private static void warmth(Assessment found, String region, List<String> lines) {
        List<FillCheck.Place> places = warmth(found, region);
        if (places.isEmpty()) {
            return;
        }
        lines.add("Warmth at " + places.size() + (places.size() == 1 ? " place" : " places") + ": mix arrived at "
                + count(places, FillCheck.Verdict.ARRIVED) + ", not at " + count(places, FillCheck.Verdict.NOT_ARRIVED)
                + ", doubtful at " + count(places, FillCheck.Verdict.DOUBTFUL) + ", felt too early or too late at "
                + count(places, FillCheck.Verdict.OUT_OF_TIME) + ".");
    }

    private static long count(List<FillCheck.Place> places, FillCheck.Verdict verdict) {
        return places.stream().filter(p -> p.verdict() == verdict).count();
    }

    private static String shot(Assessment found, SecondShot s, Units units) {
        Spot spot = s.spot();
        String where = spot == null
                ? "no hole may be drilled there"
                : PlaceNames.of(found.survey().face(spot.face())).measured(spot.xMm(), spot.yMm(), units::place);
        return s.id() + ", " + where + ": " + units.area(s.areaMm2()) + " hollow. " + s.advice();
    }
}
