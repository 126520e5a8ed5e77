package corewright.desktop.slip;

import corewright.decision.Method;
import corewright.survey.Finding;
import corewright.survey.Spot;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What the slip at the right says of whatever is touched, all in words.
 *
 * @param aside where it is, quiet, beside the title
 * @param sentence what it is
 * @param rangeTitle over the range and the facts
 * @param before what of it is older than the last change, as a sentence; empty where nothing is
 * @param range null where there is none
 * @param methods empty where nothing is to be decided
 * @param advice one sentence or two, with the reasons
 */
public record Slip(
        String title,
        String aside,
        String sentence,
        String rangeTitle,
        @Nullable Range range,
        List<Fact> facts,
        Work work,
        String before) {
    public Slip {
        facts = List.copyOf(facts);
    }

    /** All of it belongs to the survey as it is. */
    public Slip(
            String title,
            String aside,
            String sentence,
            String rangeTitle,
            @Nullable Range range,
            List<Fact> facts,
            Work work) {
        this(title, aside, sentence, rangeTitle, range, facts, work, "");
    }

    /** The same in the reader's terms: sentences of the engine are metric, with a decimal point. */
    public Slip said(UnaryOperator<String> terms) {
        return new Slip(
                terms.apply(title),
                terms.apply(aside),
                terms.apply(sentence),
                rangeTitle,
                range,
                facts.stream()
                        .map(f -> new Fact(f.name, terms.apply(f.value), f.old))
                        .toList(),
                work.said(terms),
                before);
    }

    /**
     * A figure with its range, on an axis from zero.
     *
     * @param unit of all three
     * @param before it is of before the last change
     */
    public record Range(double low, double middle, double high, String unit, boolean old) {
        /** The axis ends on a round figure beyond the range. */
        public double axisEnd() {
            double target = Math.max(high * 1.15, 1e-6);
            double power = Math.pow(10, Math.floor(Math.log10(target)));
            for (double step : new double[] {1, 1.5, 2, 3, 4, 6, 8, 10}) {
                if (step * power >= target) {
                    return step * power;
                }
            }
            return 10 * power;
        }
    }

    /**
     * A name and its figure.
     *
     * @param before it is of before the last change
     */
    public record Fact(String name, String value, boolean old) {
        public Fact(String name, String value) {
            this(name, value, false);
        }
    }

    /** How a method stands for a region. */
    public enum Standing {
        ADVISED,
        OFFERED,
        /** Stays visible, with its reason. */
        NOT_OFFERED
    }

    /** One of the four methods. */
    public record MethodKey(Method method, String name, String note, Standing standing, String why) {}

    /** A finding as the slip shows it; touching it moves the plan to its spot. */
    public record FindingLine(
            Finding.Severity severity,
            String fact,
            String consequence,
            @Nullable Spot spot,
            String region) {
        /** {@code !} can hurt or spoil, {@code ?} doubt, {@code +} would help. */
        public String mark() {
            return switch (severity) {
                case HAZARD -> "!";
                case DOUBT -> "?";
                case HINT -> "+";
            };
        }
    }

    /** What can be done and what is open. */
    public record Work(List<MethodKey> methods, String advice, String findingsTitle, List<FindingLine> findings) {
        public Work {
            methods = List.copyOf(methods);
            findings = List.copyOf(findings);
        }

        Work said(UnaryOperator<String> terms) {
            return new Work(
                    methods.stream()
                            .map(m -> new MethodKey(m.method, m.name, m.note, m.standing, terms.apply(m.why)))
                            .toList(),
                    terms.apply(advice),
                    findingsTitle,
                    findings.stream()
                            .map(f -> new FindingLine(
                                    f.severity, terms.apply(f.fact), terms.apply(f.consequence), f.spot, f.region))
                            .toList());
        }
    }
}
