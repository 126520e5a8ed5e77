package corewright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * A slip that puts all readings of a file in the wrong place.
 *
 * @param question what a person is asked
 * @param remedy what to do where the answer is yes
 * @param mended from the place as read to the place that was meant
 * @param weight of its fit beside that of others: a slip with a free figure fits too easily
 * @param scale of lengths, 1 where only the place is wrong
 */
record Mistake(String question, String remedy, UnaryOperator<Coordinate> mended, double weight, double scale) {
    /** Millimetres in each unit that a survey may be in. The foot and inch are those of 1959. */
    private static final Map<String, Double> UNITS =
            Map.of("millimetres", 1.0, "centimetres", 10.0, "metres", 1000.0, "inches", 25.4, "feet", 304.8);

    private static final double TWO_UNITS = 0.9;
    private static final double MOVED = 0.5;

    /** A datum this near the plan's is the same one, roughly held. Common practice. */
    private static final double LEAST_SHIFT_MM = 50;

    /** Every slip that is looked for, the likeliest first. */
    static List<Mistake> all(Envelope read, Envelope deck) {
        List<Mistake> all = new ArrayList<>(units());
        double xs = deck.getMinX() + deck.getMaxX();
        double ys = deck.getMinY() + deck.getMaxY();
        String swap = "Exchange the columns, in the file or under columns in survey.yaml.";
        all.add(placed("are x and y exchanged?", swap, c -> new Coordinate(c.y, c.x), 1));
        String sign = "x runs aft and y to starboard from the plan's datum: change the sign or the datum of the file.";
        all.add(placed("is x counted forward instead of aft?", sign, c -> new Coordinate(-c.x, c.y), 1));
        all.add(placed("is y counted to port instead of starboard?", sign, c -> new Coordinate(c.x, -c.y), 1));
        all.add(placed("are both axes counted the other way?", sign, c -> new Coordinate(-c.x, -c.y), 1));
        all.add(placed("is x counted from the other end?", sign, c -> new Coordinate(xs - c.x, c.y), TWO_UNITS));
        all.add(placed("is y counted from the other side?", sign, c -> new Coordinate(c.x, ys - c.y), TWO_UNITS));
        all.add(placed(
                "are x and y counted from the opposite corner?",
                sign,
                c -> new Coordinate(xs - c.x, ys - c.y),
                TWO_UNITS));
        String turned = "are x and y exchanged, and one of them counted the other way?";
        all.add(placed(turned, swap, c -> new Coordinate(-c.y, c.x), TWO_UNITS));
        all.add(placed(turned, swap, c -> new Coordinate(c.y, -c.x), TWO_UNITS));
        all.add(placed(turned, swap, c -> new Coordinate(-c.y, -c.x), TWO_UNITS));
        double dx = deck.centre().x - read.centre().x;
        double dy = deck.centre().y - read.centre().y;
        shift(all, 0, dy);
        shift(all, dx, 0);
        shift(all, dx, dy);
        return all;
    }

    private static List<Mistake> units() {
        List<Mistake> all = new ArrayList<>();
        for (String meant : List.of("metres", "feet", "inches", "centimetres", "millimetres")) {
            for (String said : List.of("millimetres", "metres", "centimetres", "inches", "feet")) {
                if (!said.equals(meant)) {
                    double factor = UNITS.getOrDefault(meant, 1.0) / UNITS.getOrDefault(said, 1.0);
                    String not = said.equals("millimetres") ? "" : ", not in " + said;
                    boolean plain = said.equals("millimetres") || meant.equals("millimetres");
                    all.add(new Mistake(
                            "are they in " + meant + not + "?",
                            "Say the unit under units in survey.yaml, or in the cells; all files must agree with the plan.",
                            c -> new Coordinate(c.x * factor, c.y * factor),
                            plain ? 1 : TWO_UNITS,
                            factor));
                }
            }
        }
        return all;
    }

    private static void shift(List<Mistake> all, double dx, double dy) {
        if (Math.hypot(dx, dy) >= LEAST_SHIFT_MM) {
            all.add(placed(
                    String.format(
                                    Locale.ROOT,
                                    "is their datum another than the plan's? They fit when moved by %.0f mm in x and %.0f mm in y",
                                    dx,
                                    dy)
                            + ".",
                    "Read and draw from one datum.",
                    c -> new Coordinate(c.x + dx, c.y + dy),
                    MOVED));
        }
    }

    private static Mistake placed(String question, String remedy, UnaryOperator<Coordinate> mended, double weight) {
        return new Mistake(question, remedy, mended, weight, 1);
    }
}
