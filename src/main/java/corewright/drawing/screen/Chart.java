package corewright.drawing.screen;

import java.util.List;

/**
 * A small chart: two axes and what stands between them, in the axes' own figures.
 *
 * @param elements painted in this order
 */
public record Chart(Axis across, Axis up, List<Element> elements) {
    public Chart {
        elements = List.copyOf(elements);
    }

    /**
     * An axis from zero.
     *
     * @param title quantity and unit
     * @param end round, above 0
     * @param parts between the ticks
     */
    public record Axis(String title, double end, int parts) {
        /** An axis that ends on a round figure not below the largest shown. */
        public static Axis upTo(double largest, String title) {
            double power = Math.pow(10, Math.floor(Math.log10(Math.max(largest, 1e-9))));
            double[] ends = {1, 1.5, 2, 3, 4, 5, 6, 8, 10};
            int[] parts = {5, 3, 4, 3, 4, 5, 3, 4, 5};
            for (int i = 0; i < ends.length; i++) {
                if (ends[i] * power >= largest * (1 - 1e-9)) {
                    return new Axis(title, ends[i] * power, parts[i]);
                }
            }
            return new Axis(title, 10 * power, 5);
        }
    }

    /** A place in the axes' figures. */
    public record At(double x, double y) {}

    /** Something between the axes. */
    public sealed interface Element permits Line, End, Marks, Bars, Span {}

    /** A line through points; broken where it is what ought to be. */
    public record Line(List<At> points, boolean broken) implements Element {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** A thin line: one end of a range round a {@link Line}. */
    public record End(List<At> points) implements Element {
        public End {
            points = List.copyOf(points);
        }
    }

    /** How a mark is drawn: shape tells the kind. */
    public enum Sign {
        DISC,
        RING,
        /** One of very many. */
        DOT
    }

    /** Like marks. */
    public record Marks(List<At> points, Sign sign) implements Element {
        public Marks {
            points = List.copyOf(points);
        }
    }

    /** Columns of one width from the axis up, the first beginning at zero. */
    public record Bars(double width, List<Double> heights) implements Element {
        public Bars {
            heights = List.copyOf(heights);
        }
    }

    /** A thick bar from low to high with the middle as a tall tick, at a height. */
    public record Span(double low, double middle, double high, double y) implements Element {}
}
