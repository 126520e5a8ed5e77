package corewright.drawing.placing;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.marks.WarmthMark;
import corewright.repair.plan.SecondShot;
import corewright.survey.Sound;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;

/** What the labels of a fill check say, the first line being the head. */
record FillWords(Measure measure) {
    /** Below, a tenth of a gram counts. */
    private static final double FEW_GRAMS = 9.95;

    List<String> full(FilledSpaces.Space space) {
        List<String> lines = new ArrayList<>(brief(space));
        if (!space.taps().isEmpty()) {
            List<String> heard = new ArrayList<>();
            add(heard, space.heard(Sound.SOUND), "sound");
            add(heard, space.heard(Sound.DULL), "dull");
            add(heard, space.heard(Sound.HOLLOW), "hollow");
            lines.add("taps: " + String.join(", ", heard));
        }
        if (!space.warmth().isEmpty()) {
            List<String> felt = new ArrayList<>();
            add(felt, warm(space, WarmthMark.Says.THERE), "warm");
            add(felt, warm(space, WarmthMark.Says.NOT_THERE), "cold");
            add(felt, warm(space, WarmthMark.Says.NOTHING), "not telling");
            lines.add("warmth: " + String.join(", ", felt));
        }
        return lines;
    }

    private static long warm(FilledSpaces.Space space, WarmthMark.Says says) {
        return space.warmth().stream()
                .filter(p -> WarmthMark.Says.of(p.verdict()) == says)
                .count();
    }

    private static void add(List<String> words, long n, String word) {
        if (n > 0) {
            words.add(n + " " + word);
        }
    }

    List<String> brief(FilledSpaces.Space space) {
        String tapped = space.cured()
                .map(c -> "tapped over " + Figures.fixed(100 * c.tappedShare(), 0) + " %")
                .orElse("not tapped yet");
        return List.of("filled, " + tapped, measure.area(space.area().getArea()));
    }

    List<String> full(SecondShot shot) {
        List<String> lines = new ArrayList<>(brief(shot));
        lines.add(wayIn(shot));
        return lines;
    }

    List<String> brief(SecondShot shot) {
        return List.of("still hollow, " + measure.area(shot.areaMm2()) + ", " + grams(shot));
    }

    private static String grams(SecondShot shot) {
        return gram(shot.lowG()) + " to " + gram(shot.highG()) + " g";
    }

    private static String gram(double g) {
        return Figures.fixed(g, g < FEW_GRAMS ? 1 : 0);
    }

    private String wayIn(SecondShot shot) {
        Spot spot = shot.spot();
        if (spot == null) {
            return "no hole may be drilled here";
        }
        String stop = ", stop at " + measure.stopFigure(shot.depthStopMm()) + " " + measure.depthUnit();
        return (shot.hole().isEmpty() ? "drill a new hole " + shot.id() : "drill " + shot.hole() + " open again")
                + stop;
    }
}
