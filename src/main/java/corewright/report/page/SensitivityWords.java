package corewright.report.page;

import corewright.assessment.Assessment;
import corewright.decision.Sensitivity;
import corewright.decision.Sensitivity.Bar;
import corewright.decision.Sensitivity.Input;
import corewright.decision.Sensitivity.Swing;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import java.util.List;

/** What moves the advised plan's cost and stiffness most, in words. */
public final class SensitivityWords {
    private static final double MM2_PER_M2 = 1e6;
    private static final double MM3_PER_LITRE = 1e6;

    private final Sensitivity sensitivity;
    private final Measure measure;
    private final String currency;

    public SensitivityWords(Assessment assessment) {
        sensitivity = assessment.decision().weighing().sensitivity();
        measure = Measure.of(assessment.survey());
        currency = Prose.plain(assessment.survey().settings().costs().currency());
    }

    /** As people call it. */
    public static String name(Input input) {
        return switch (input) {
            case AREA -> "damaged area";
            case DEPTH -> "depth of empty space";
            case EXPANSION -> "rise of the mix";
            case FOAM -> "stiffness of the foam";
            case WATER -> "stiffness of wet core";
            case RATES -> "hours of work";
            case GATE -> "gate for dry core";
        };
    }

    /** From the low to the high end of its range, with its unit. */
    public String range(Input input) {
        Swing swing = sensitivity.swings().stream()
                .filter(s -> s.input() == input)
                .findFirst()
                .orElseThrow();
        double low = swing.low();
        double high = swing.high();
        return switch (input) {
            case AREA ->
                apart(measure.areaOf(low * MM2_PER_M2), measure.areaOf(high * MM2_PER_M2)) + " " + measure.areaUnit();
            case DEPTH ->
                apart(measure.volume(low * MM3_PER_LITRE), measure.volume(high * MM3_PER_LITRE)) + " "
                        + measure.volumeUnit();
            case EXPANSION -> Wording.range(low, high, 1) + " times";
            case FOAM -> Wording.range(low, high, 1) + " of its law's";
            case WATER -> Wording.range(low, high, 1) + " of sound core's";
            case RATES -> Wording.range(low, high, 0) + " hours";
            case GATE -> Wording.range(low, high, 0) + " % water";
        };
    }

    private static String apart(double low, double high) {
        return Wording.range(low, high, Wording.apart(low, high));
    }

    /** One sentence; empty where nothing moves anything. */
    public String inShort() {
        List<Bar> cost = sensitivity.ofCost();
        List<Bar> stiffness = sensitivity.ofStiffness();
        if (cost.isEmpty()) {
            return "";
        }
        String first = "Of all that is not sure, " + name(cost.get(0).input()) + " moves the cost most";
        return (stiffness.isEmpty()
                                ? first
                                : first + ", " + name(stiffness.get(0).input()) + " the stiffness")
                        .replace("hours of work moves", "hours of work move")
                + ".";
    }

    /** What the bars of the cost say. */
    public String cost() {
        List<Bar> bars = sensitivity.ofCost();
        StringBuilder words = new StringBuilder();
        for (Bar bar : bars.subList(0, Math.min(2, bars.size()))) {
            words.append(words.isEmpty() ? "" : " ")
                    .append(Wording.sentence(name(bar.input())))
                    .append(", ")
                    .append(range(bar.input()))
                    .append(": ")
                    .append(Wording.money(currency, bar.atLow(), bar.atHigh()))
                    .append('.');
        }
        return words + " In the middle of all it is "
                + Wording.money(
                        currency,
                        sensitivity.advised().cost(),
                        sensitivity.advised().cost()) + "."
                + gate();
    }

    /** What the gate does, which a bar cannot show. */
    private String gate() {
        return sensitivity.swings().stream()
                .filter(s -> s.input() == Input.GATE)
                .findFirst()
                .map(s -> " A gate of " + Figures.atMost(s.high(), 1) + " % in place of " + Figures.atMost(s.low(), 1)
                        + " %"
                        + (s.methods().isEmpty()
                                ? " gives no region another method"
                                : " gives " + Wording.list(s.methods()) + " another method")
                        + days(s) + ".")
                .orElse("");
    }

    private static String days(Swing swing) {
        double low = swing.atLow().days();
        double high = swing.atHigh().days();
        return Math.ceil(low) == Math.ceil(high) || Double.isInfinite(low) || Double.isInfinite(high)
                ? ""
                : " and takes " + Wording.days(high, high) + " days in place of " + Wording.days(low, low);
    }

    /** What the bars of the stiffness say. */
    public String stiffness() {
        List<Bar> bars = sensitivity.ofStiffness();
        String after = "After what is advised the panel " + Prose.plain(sensitivity.panel()) + ", which lost most, has "
                + hundredths(sensitivity.advised().ofAsBuilt().orElse(1.0)) + " of 100.";
        if (bars.isEmpty()) {
            return after + " None of these moves that by half a hundredth.";
        }
        Bar first = bars.get(0);
        return Wording.sentence(name(first.input())) + ", " + range(first.input()) + ": " + hundredths(first.atLow())
                + " to " + hundredths(first.atHigh()) + " of 100. " + after;
    }

    private static String hundredths(double share) {
        return Figures.fixed(100 * share, 1);
    }
}
