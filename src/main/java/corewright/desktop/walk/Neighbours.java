package corewright.desktop.walk;

import corewright.drawing.kit.Figures;
import corewright.survey.Meter;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Whether a value stands far from what was read around it. */
final class Neighbours {
    /** Two steps of a grid and a little: the eight around, and those beyond a gap. */
    private static final double NEAR_STEPS = 1.6;

    /**
     * Far: more than twice the step from dry to wet away from every neighbour, which no meter's scatter explains (4.5 % of
     * that is usual) but the edge of a wet patch may; so it is asked, not refused. Common practice.
     */
    private static final double FAR_STEPS = 2;

    /** Where the survey does not say what is dry and wet: this share of the scale. */
    private static final double FAR_SHARE = 0.3;

    private static final int NAMED = 2;

    private record Near(double distanceMm, double value, String shown) {}

    private Neighbours() {}

    /**
     * @param noted at each point of the walk
     * @param at the point in hand
     */
    public static String question(
            List<Spot> points, List<Noted> noted, int at, double spacingMm, double value, Meter meter) {
        List<Near> near = near(points, noted, at, spacingMm);
        if (near.size() < 2) {
            return "";
        }
        boolean above = near.stream().allMatch(n -> value - n.value() > far(meter));
        boolean below = near.stream().allMatch(n -> n.value() - value > far(meter));
        if (!above && !below) {
            return "";
        }
        List<String> named = near.stream().limit(NAMED).map(Near::shown).toList();
        return Figures.atMost(value, 1) + " is far " + (above ? "above" : "below") + " its neighbours ("
                + String.join(" and ", named) + "). Wipe the spot and read it again, or press Next to keep it.";
    }

    private static double far(Meter meter) {
        Double dry = meter.dry();
        Double wet = meter.wet();
        return dry == null || wet == null ? FAR_SHARE * meter.fullScale() : FAR_STEPS * (wet - dry);
    }

    private static List<Near> near(List<Spot> points, List<Noted> all, int at, double spacingMm) {
        List<Near> near = new ArrayList<>();
        Spot here = points.get(at);
        for (int i = 0; i < points.size(); i++) {
            Spot there = points.get(i);
            double d = Math.hypot(there.xMm() - here.xMm(), there.yMm() - here.yMm());
            Noted noted = all.get(i);
            if (i != at && d <= NEAR_STEPS * spacingMm && !noted.value().isEmpty()) {
                near.add(new Near(d, Double.parseDouble(noted.value()), noted.shown()));
            }
        }
        near.sort(Comparator.comparingDouble(Near::distanceMm));
        return near;
    }
}
