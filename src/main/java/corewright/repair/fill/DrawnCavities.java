package corewright.repair.fill;

import corewright.damage.Quantiles;
import corewright.overlay.Overlay;
import corewright.repair.mix.Lifts;
import corewright.repair.pattern.Cavity;
import corewright.repair.plan.Hole;
import corewright.repair.plan.SpaceTask;
import corewright.survey.settings.Resin;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * A space as it may be: as small or as large as one in ten, and most likely. Depths go with the volume; the rim of the large
 * one lies farther out as far as the damage is possible, that of the small one farther in.
 */
public final class DrawnCavities {
    /** One in ten lies so much farther out or in. Practice. */
    private static final double RIM_MM = 12.5;

    /** On so many cells, of 25 mm at most, the small and the large cavity are told well enough. Practice. */
    private static final double CELLS = 1600;

    private final SpaceTask task;
    private final Quantiles mm3;
    private final List<Hole> holes;
    private final Lifts lifts;

    /** Of the most likely depth over the mapped one. */
    private final double deeper;

    /** @param holes that are filled: where these take several lifts, what is simulated is the last one */
    public DrawnCavities(SpaceTask task, Quantiles mm3, List<Hole> holes) {
        this.task = task;
        this.mm3 = mm3;
        this.holes = List.copyOf(holes);
        lifts = Lifts.of(task.face(), task.settings().drilling());
        Polygon likely = task.space().area();
        deeper = mm3.p50()
                / Cavity.of(task, likely, FillPlanning.cellMm(likely.getArea())).mm3();
    }

    /** One in ten is smaller; most likely; one in ten is larger. */
    public enum Size {
        SMALL,
        MIDDLE,
        LARGE
    }

    public FillTrial trial(Size size, Resin resin) {
        Polygon likely = task.space().area();
        double fine = FillPlanning.cellMm(likely.getArea());
        double cellMm = size == Size.MIDDLE ? fine : Math.max(fine, Math.min(25, Math.sqrt(likely.getArea() / CELLS)));
        Cavity cavity =
                switch (size) {
                    case SMALL -> cavity(shrunk(likely), cellMm, mm3.p10());
                    case MIDDLE -> cavity(likely, cellMm, mm3.p50());
                    case LARGE -> cavity(grown(likely), cellMm, mm3.p90());
                };
        Cavity last = lifts.most(holes) > 1 ? cavity.above(c -> layerMm(cavity.centre(c))) : cavity;
        return new FillTrial(task.face(), last, cavity, resin, task.settings());
    }

    /** Hard mix of earlier lifts, an equal part of the height for each. */
    private double layerMm(Coordinate at) {
        int n = holes.stream()
                .min(Comparator.comparingDouble(h -> h.spot().coordinate().distance(at)))
                .map(lifts::at)
                .orElse(1);
        double looseGapMm = task.settings().thresholds().looseGapMm();
        return (n - 1.0) / n * deeper * Math.max(looseGapMm, Cavity.depthAt(task.voidDepthMm(), at.x, at.y));
    }

    private Cavity cavity(Polygon area, double cellMm, double holdingMm3) {
        return Cavity.of(task, area, cellMm).holding(holdingMm3);
    }

    private Polygon grown(Polygon likely) {
        Geometry possible = Overlay.union(
                task.space().regions().stream().map(r -> r.possible()).toList());
        Geometry out = Overlay.union(List.of(likely, Overlay.intersection(likely.buffer(RIM_MM), possible)));
        return out instanceof Polygon area ? area : likely;
    }

    private static Polygon shrunk(Polygon likely) {
        return likely.buffer(-RIM_MM) instanceof Polygon area && !area.isEmpty() ? area : likely;
    }
}
