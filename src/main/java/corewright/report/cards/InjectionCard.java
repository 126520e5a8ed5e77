package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.repair.mix.Lifts;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Holding;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.report.page.Wording;
import corewright.survey.Laminate;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.Comparator;
import java.util.List;

/** What the sides of a region's cards draw on. */
record InjectionCard(Assessment assessment, InjectionPlan plan) {
    Settings settings() {
        return assessment.survey().settings();
    }

    Region region() {
        return assessment.damage().regions().stream()
                .filter(r -> r.id().equals(plan.region()))
                .findFirst()
                .orElseThrow();
    }

    /** All that are filled, the one that leads first. */
    List<Region> regions() {
        return plan.parts().stream()
                .flatMap(part -> assessment.damage().regions().stream().filter(r -> r.id().equals(part.region())))
                .toList();
    }

    /** {@code R1}, {@code R1 with R5}. */
    String title() {
        String lead = plan.region();
        List<String> others =
                plan.parts().stream().map(InjectionPlan.Part::region).skip(1).toList();
        return others.isEmpty() ? lead : lead + " with " + Wording.list(others);
    }

    FaceDamage face() {
        return assessment.damage().face(region().face());
    }

    LyingSheet sheet() {
        return LyingSheet.of(assessment.survey());
    }

    Measure measure() {
        return Measure.of(assessment.survey());
    }

    Holding holding() {
        return Holding.of(face().face().posture());
    }

    CardWords words() {
        return new CardWords(face().face().posture(), resin().expansion() > 1);
    }

    RegionDecision decision() {
        return assessment.decision().on(plan.region());
    }

    Resin resin() {
        return settings().resin(plan.resin());
    }

    HoleGrams grams() {
        return HoleGrams.of(plan, settings().drilling().wasteFraction());
    }

    /** Minute 0 of the card: the region's first cup. */
    double zeroS() {
        return plan.batches().stream().mapToDouble(Batch::mixAtS).min().orElse(0);
    }

    /** Where a cup stands in this region's own count, from 1. */
    int cup(Batch batch) {
        return plan.batches().indexOf(batch) + 1;
    }

    /** {@code cup 3}, of a space in lifts {@code cup 3, lift 2}. */
    String cupName(Batch batch) {
        List<Batch> cups = plan.batches();
        boolean lifts = cups.stream().anyMatch(c -> Lifts.number(c, cups) > 1);
        return "cup " + cup(batch) + (lifts ? ", lift " + Lifts.number(batch, cups) : "");
    }

    /** The cups a hole is filled from, one after another: {@code 1}, {@code 1, 2}, {@code 1 to 4}, {@code 1, 2, 4}. */
    String cups(Hole hole) {
        List<String> cups = plan.batches().stream()
                .filter(b -> b.holes().contains(hole.id()))
                .map(b -> String.valueOf(cup(b)))
                .toList();
        return cups.size() > 2 && run(cups)
                ? cups.get(0) + " to " + cups.get(cups.size() - 1)
                : String.join(", ", cups);
    }

    /** Whether numbers follow each other without a gap. */
    private static boolean run(List<String> numbers) {
        String last = "";
        for (String number : numbers) {
            if (!last.isEmpty() && !number.equals(String.valueOf(Integer.parseInt(last) + 1))) {
                return false;
            }
            last = number;
        }
        return true;
    }

    /** {@code hole 1}, {@code holes 1 and 2}. */
    static String holes(Batch batch) {
        List<String> numbers = batch.holes().stream().map(Figures::holeNumber).toList();
        boolean run = numbers.size() > 3 && !numbers.get(0).startsWith("N") && run(numbers);
        String which = run ? numbers.get(0) + " to " + numbers.get(numbers.size() - 1) : Wording.list(numbers);
        return (numbers.size() == 1 ? "hole " : "holes ") + which;
    }

    /** The injection hole that is drilled deepest. */
    Hole deepest() {
        return plan.holes().stream()
                .max(Comparator.comparingDouble(Hole::depthStopMm))
                .orElseThrow();
    }

    Laminate laminateAt(Hole hole) {
        return assessment.survey().laminateAt(hole.spot());
    }

    /** {@code Brindlewisp, boat deck.} */
    String place() {
        String boat = Titles.boat(assessment.survey().heading());
        int comma = boat.indexOf(',');
        String place = (comma < 0 ? boat : boat.substring(0, comma)) + ", " + Prose.plain(region().face());
        return place + ".";
    }
}
