package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Hole;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/**
 * Mix that is held back for a cavity larger than planned: at each hole and vent where nothing shows in the end, so much
 * of it.
 *
 * <p>Into a hole of a mix that does not rise, so much more until mix shows at the next one. Any other place's dose fills what is empty nearest to it in the large cavity, at least a third of what is nearest to it at all.
 * What is too much comes out again at the place itself.
 */
public final class HeldBack {
    /** Of what lies nearest to a place, where it shows in the one large cavity that was tried. Practice. */
    private static final double LEAST_SHARE = 0.35;

    /** More than a hole's share of a larger space, and than the mean of all holes, that may go in until mix shows at the next. Practice. */
    private static final double HIGH = 1.3;

    private static final double HIGH_OF_MEAN = 2.5;

    private HeldBack() {}

    /**
     * No doses yet: later cups follow what shows, nothing is poured in the end.
     *
     * @param mostMm3 liquid held back in all
     */
    static FillTrial.Held watching(FillState state, double mostMm3, double largerBy) {
        FillTrial.Run run = state.ran();
        Cavity cavity = run.setting().cavity();
        List<FillTrial.Dose> doses = new ArrayList<>();
        List<Hole> holes = state.pouring().holes();
        List<Coordinate> places = state.places();
        List<Coordinate> vents = places.subList(holes.size(), places.size());
        for (int p = 0; p < places.size(); p++) {
            double dueS = run.result().arrivalS()[cell(cavity, places.get(p))];
            doses.add(new FillTrial.Dose(
                    places.get(p), 0, dueS, p < holes.size() ? List.of() : watched(places.get(p), vents, holes)));
        }
        return new FillTrial.Held(doses, mostMm3, largerBy);
    }

    /** The holes for which a vent is the next one, and the hole that is next to it. */
    public static List<String> watched(Coordinate vent, List<Coordinate> vents, List<Hole> holes) {
        double nearest = holes.stream()
                .mapToDouble(h -> h.spot().coordinate().distance(vent))
                .min()
                .orElse(0);
        return holes.stream()
                .filter(h -> {
                    double mm = h.spot().coordinate().distance(vent);
                    return mm <= nearest
                            || vents.stream()
                                    .allMatch(v -> h.spot().coordinate().distance(v) >= mm);
                })
                .map(Hole::id)
                .toList();
    }

    private static int cell(Cavity cavity, Coordinate place) {
        int best = cavity.cells[0];
        double least = Double.POSITIVE_INFINITY;
        for (int c : cavity.cells) {
            double d = Math.hypot(cavity.x(c) - place.x, cavity.y(c) - place.y);
            best = d < least ? c : best;
            least = Math.min(least, d);
        }
        return best;
    }

    /**
     * The doses after a fill of the large cavity with none. A hole's, of a mix that does not rise, fills what is empty nearest to it: it gets
     * more in any case.
     *
     * @param watching how that was filled
     */
    static FillTrial.Held of(
            FillTrial.Run run, FillTrial.Held watching, Resin resin, Map<String, Double> plannedMm3, List<Hole> holes) {
        List<FillTrial.Dose> before = watching.doses();
        List<Coordinate> places = before.stream().map(FillTrial.Dose::at).toList();
        boolean[] shown = run.result().shown();
        boolean[] filled = new boolean[shown.length];
        for (int p = 0; p < filled.length; p++) {
            boolean again = resin.expansion() <= 1 && !before.get(p).vent();
            filled[p] = resin.expansion() > 1 ? shown[p] : !again;
        }
        double[] emptyMm3 = nearMm3(run, places, filled, true);
        double[] nearMm3 = nearMm3(run, places, new boolean[filled.length], false);
        double liquid = resin.pack() / resin.expansion();
        double meanMm3 =
                plannedMm3.values().stream().mapToDouble(v -> v).average().orElse(0);
        List<FillTrial.Dose> doses = new ArrayList<>();
        for (int p = 0; p < emptyMm3.length; p++) {
            double least = filled[p] || resin.expansion() > 1 ? LEAST_SHARE * nearMm3[p] : 0;
            double dose = resin.expansion() > 1 || before.get(p).vent()
                    ? liquid * Math.max(emptyMm3[p], least)
                    : more(plannedMm3.getOrDefault(holes.get(p).id(), 0.0), meanMm3, watching.largerBy());
            doses.add(before.get(p).of(Math.min(dose, watching.mostMm3())));
        }
        return new FillTrial.Held(doses, watching.mostMm3(), watching.largerBy());
    }

    /** Into a hole of a mix that does not rise, at most: where the next one stands farther off in a larger space, more than its share. */
    private static double more(double plannedMm3, double meanMm3, double largerBy) {
        return largerBy * Math.max(HIGH * plannedMm3, HIGH_OF_MEAN * meanMm3) - plannedMm3;
    }

    /** What of the cavity, or of what is empty in it, lies nearest to each place. */
    private static double[] nearMm3(FillTrial.Run run, List<Coordinate> places, boolean[] last, boolean empty) {
        Cavity cavity = run.setting().cavity();
        double[] mm3 = new double[places.size()];
        for (int c : cavity.cells) {
            double share = empty ? 1 - run.result().filled()[c] : 1;
            if (share > 0) {
                mm3[nearest(cavity, c, places, last)] += share * cavity.gapMm[c] * cavity.cell * cavity.cell;
            }
        }
        return mm3;
    }

    /**
     * The nearest place.
     *
     * @param last those taken only where there is no other
     */
    private static int nearest(Cavity cavity, int cell, List<Coordinate> places, boolean[] last) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < last.length; p++) {
            double far = last[p] ? 1e6 : 0;
            double x = Math.abs(cavity.x(cell) - places.get(p).x);
            double y = Math.abs(cavity.y(cell) - places.get(p).y);
            if (Math.max(x, y) + far < least && Math.hypot(x, y) + far < least) {
                least = Math.hypot(x, y) + far;
                best = p;
            }
        }
        return best;
    }
}
