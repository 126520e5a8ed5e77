package corewright.repair.fill;

import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Hole;
import corewright.survey.settings.Resin;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Mix that is held back for a cavity larger than planned: at each hole and vent where nothing shows in the end, so much
 * of it.
 *
 * <p>A place's dose fills what is empty nearest to it in the large cavity, at least a third of what is nearest to it at all.
 * What is too much comes out again at the place itself.
 */
public final class HeldBack {
    /** Of what lies nearest to a place, where it shows in the one large cavity that was tried. Practice. */
    private static final double LEAST_SHARE = 0.35;

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
        for (int c : cavity.cells) {
            double d = Math.hypot(cavity.x(c) - place.x, cavity.y(c) - place.y);
            best = d < Math.hypot(cavity.x(best) - place.x, cavity.y(best) - place.y) ? c : best;
        }
        return best;
    }

    /**
     * The doses after a fill of the large cavity with none.
     *
     * @param watching how that was filled
     */
    static FillTrial.Held of(FillTrial.Run run, FillTrial.Held watching, Resin resin) {
        List<Coordinate> places =
                watching.doses().stream().map(FillTrial.Dose::at).toList();
        Cavity cavity = run.setting().cavity();
        double[] emptyMm3 = new double[places.size()];
        double[] nearMm3 = new double[places.size()];
        boolean[] shown = run.result().shown();
        for (int c : cavity.cells) {
            double mm3 = cavity.gapMm[c] * cavity.cell * cavity.cell;
            double empty = mm3 * (1 - run.result().filled()[c]);
            nearMm3[nearest(cavity, c, places, new boolean[places.size()])] += mm3;
            if (empty > 0) {
                emptyMm3[nearest(cavity, c, places, shown)] += empty;
            }
        }
        double liquid = resin.pack() / resin.expansion();
        List<FillTrial.Dose> doses = new ArrayList<>();
        for (int p = 0; p < emptyMm3.length; p++) {
            double dose = liquid * Math.max(emptyMm3[p], LEAST_SHARE * nearMm3[p]);
            doses.add(new FillTrial.Dose(
                    places.get(p),
                    Math.min(dose, watching.mostMm3()),
                    watching.doses().get(p).dueS(),
                    watching.doses().get(p).watched()));
        }
        return new FillTrial.Held(doses, watching.mostMm3(), watching.largerBy());
    }

    /** The nearest place, of those at which nothing shows where there is one. */
    private static int nearest(Cavity cavity, int cell, List<Coordinate> places, boolean[] shown) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p < shown.length; p++) {
            double d = Math.hypot(cavity.x(cell) - places.get(p).x, cavity.y(cell) - places.get(p).y)
                    + (shown[p] ? 1e6 : 0);
            if (d < least) {
                least = d;
                best = p;
            }
        }
        return best;
    }
}
