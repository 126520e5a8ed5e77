package corewright.decision;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How far one input alone moves what is advised, between the ends of its range, all else as it is.
 *
 * @param panel whose stiffness is told: the one that lost most; empty where none was calculated
 * @param advised cost, days and stiffness in the middle of everything
 * @param swings of the inputs that have a range here
 */
public record Sensitivity(String panel, Outcome advised, List<Swing> swings) {
    /** Nothing advised. */
    public static final Sensitivity NONE = new Sensitivity("", new Outcome(0, 0, Optional.empty()), List.of());

    /** A swing of less than this part of the middle is not worth telling: for stiffness it is what a mesh does to it. */
    private static final double NOTHING = 0.005;

    public Sensitivity {
        swings = List.copyOf(swings);
    }

    /** What is not known, or not agreed. */
    public enum Input {
        /** Damaged area of all faces, m2. */
        AREA("area", "m2"),
        /** Empty space under the skins, l. */
        DEPTH("depth", "l"),
        /** Free-rise expansion of the mix. */
        EXPANSION("expansion", "times"),
        /** What the cured foam has of the modulus by its density. */
        FOAM("foam modulus", "share"),
        /** What wet core has kept of its moduli. */
        WATER("wet modulus", "share"),
        /** Hours of work on the whole deck. */
        RATES("rates", "h"),
        /** Water content at which core counts as dry enough to bond. */
        GATE("gate", "percent");

        private final String word;
        private final String unit;

        Input(String word, String unit) {
            this.word = word;
            this.unit = unit;
        }

        /** As in summary.json. */
        public String word() {
            return word;
        }

        public String unit() {
            return unit;
        }
    }

    /**
     * What the advised plan comes to.
     *
     * @param cost middle of its range, the survey's currency
     * @param days middle of its range, infinite where it may never be dry
     * @param ofAsBuilt stiffness of the panel over the one as built
     */
    public record Outcome(double cost, double days, Optional<Double> ofAsBuilt) {}

    /**
     * One input from its low to its high end, in its unit.
     *
     * @param methods regions whose method the rules change at the high end
     */
    public record Swing(Input input, double low, double high, Outcome atLow, Outcome atHigh, List<String> methods) {
        public Swing {
            methods = List.copyOf(methods);
        }
    }

    /** One input and one figure. */
    public record Bar(Input input, double atLow, double atHigh) {
        /** From one end to the other. */
        public double width() {
            return Math.abs(atHigh - atLow);
        }
    }

    /** Inputs that move the cost, the widest first. */
    public List<Bar> ofCost() {
        return widestFirst(o -> Optional.of(o.cost));
    }

    /** Inputs that move the stiffness, the widest first. */
    public List<Bar> ofStiffness() {
        return widestFirst(Outcome::ofAsBuilt);
    }

    private List<Bar> widestFirst(Function<Outcome, Optional<Double>> figure) {
        double least = NOTHING * figure.apply(advised).orElse(0.0);
        return swings.stream()
                .flatMap(s -> figure
                        .apply(s.atLow)
                        .flatMap(low -> figure.apply(s.atHigh).map(high -> new Bar(s.input, low, high)))
                        .stream())
                .filter(b -> b.width() > least)
                .sorted(Comparator.comparingDouble(Bar::width).reversed())
                .toList();
    }
}
