package corewright.repair.work;

import corewright.damage.FaceDamage;
import corewright.overlay.Overlay;
import corewright.repair.mix.Mix;
import corewright.repair.mix.ResinChoice;
import corewright.repair.pattern.Cavity;
import corewright.repair.pattern.DrillPlaces;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.DepthStop;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SecondShot;
import corewright.survey.Laminate;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.settings.Drilling;
import corewright.survey.settings.Resin;
import corewright.survey.settings.Settings;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Plans what fills the places of one space that are still hollow after cure. */
final class SecondShots {
    /** A planned hole this near is opened again rather than a new one drilled: the mix gets that far under any gap. */
    private static final double BESIDE_MM = 25;

    /** Beside the edge. Practice. */
    private static final double RIM_MM = 50;

    /** Less beyond the edge is rounding of corners. */
    private static final double SLIVER_MM2 = 10;

    /** Accuracy of the middle of a place: a drill's diameter would do. */
    private static final double MIDDLE_MM = 1;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Survey survey;
    private final FaceDamage damage;
    private final EmptySpace space;
    private final InjectionPlan plan;
    private final Settings settings;

    SecondShots(Survey survey, FaceDamage damage, EmptySpace space, InjectionPlan plan) {
        this.survey = survey;
        this.damage = damage;
        this.space = space;
        this.plan = plan;
        settings = survey.settings();
    }

    private record WayIn(@Nullable Spot spot, String hole, double stopMm) {
        static final WayIn NONE = new WayIn(null, "", 0);
    }

    /** @param taps hollow ones and the dull beside them */
    SecondShot of(String id, Polygon area, List<Tap> taps) {
        Coordinate middle = MaximumInscribedCircle.getCenter(area, MIDDLE_MM).getCoordinate();
        WayIn in = reopened(area, middle).or(() -> drilled(area, middle)).orElse(WayIn.NONE);
        Drilling drilling = settings.drilling();
        double looseMm = settings.thresholds().looseGapMm();
        Resin resin = ResinChoice.forGap(settings.resins(), looseMm).orElseGet(() -> settings.resin(plan.resin()));
        double lowMm3 = area.getArea() * looseMm;
        double beyondMm2 = Overlay.difference(area, space.area()).getArea();
        double highMm3 = (area.getArea() - beyondMm2) * meanGapMm(area, middle) + beyondMm2 * rimGapMm(area);
        double lowG = Mix.of(lowMm3, resin, drilling.wasteFraction()).grossG();
        double highG = Mix.of(highMm3, resin, drilling.wasteFraction()).grossG();
        return new SecondShot(
                id,
                space.at(middle).id(),
                area,
                in.spot,
                in.hole,
                lowMm3,
                highMm3,
                resin.name(),
                lowG,
                highG,
                in.stopMm,
                taps.stream().map(Tap::id).toList(),
                advice(in, resin, lowG, highG));
    }

    /** The planned hole or vent in the place or just beside it that is nearest to its middle. */
    private Optional<WayIn> reopened(Polygon area, Coordinate middle) {
        return plan.holes().stream()
                .filter(h -> h.kind() == Hole.Kind.INJECTION || h.kind() == Hole.Kind.VENT)
                .filter(h -> area.isWithinDistance(FACTORY.createPoint(h.spot().coordinate()), BESIDE_MM))
                .min(Comparator.comparingDouble(h -> h.spot().coordinate().distance(middle)))
                .map(h -> new WayIn(h.spot(), h.id(), h.depthStopMm()));
    }

    /** The allowed place deepest inside; the middle of a narrow part only where there is no other. */
    private Optional<WayIn> drilled(Polygon area, Coordinate middle) {
        Polygon whole = whole(area);
        Cavity cavity = cavity(whole);
        DrillPlaces places =
                DrillPlaces.of(cavity, whole, damage.face(), settings.drilling().edgeClearanceMm());
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(area);
        IndexedFacetDistance edge = new IndexedFacetDistance(area.getBoundary());
        return Arrays.stream(cavity.cells)
                .filter(c -> places.allowed[c] && inside.locate(cavity.centre(c)) != Location.EXTERIOR)
                .boxed()
                .min(Comparator.comparing((Integer c) -> places.narrow[c])
                        .thenComparingDouble(c -> -edge.distance(point(cavity.centre(c))))
                        .thenComparingDouble(c -> cavity.centre(c).distance(middle)))
                .map(cavity::centre)
                .flatMap(this::newHole);
    }

    /** The space with a place that goes on beyond its edge. */
    private Polygon whole(Polygon area) {
        if (Overlay.difference(area, space.area()).getArea() < SLIVER_MM2) {
            return space.area();
        }
        Geometry all = Overlay.union(space.area(), area);
        return all instanceof Polygon one ? one : area;
    }

    private static Point point(Coordinate at) {
        return FACTORY.createPoint(at);
    }

    private Optional<WayIn> newHole(Coordinate at) {
        Spot spot = new Spot(space.face(), Math.rint(at.x), Math.rint(at.y)); // a person measures whole millimetres
        Laminate laminate = survey.laminateAt(spot);
        double marginMm = settings.drilling().depthMarginMm();
        double depthMm = Cavity.depthAt(damage.surfaces().voidDepthMm(), spot.xMm(), spot.yMm());
        return DepthStop.possible(laminate, marginMm)
                ? Optional.of(new WayIn(spot, "", DepthStop.mm(laminate, depthMm, marginMm)))
                : Optional.empty();
    }

    /** As mapped before the work, at least that of a loose skin. */
    private double meanGapMm(Polygon area, Coordinate middle) {
        double looseMm = settings.thresholds().looseGapMm();
        Cavity under = cavity(area);
        IndexedPointInAreaLocator inside = new IndexedPointInAreaLocator(space.area());
        return Arrays.stream(under.cells)
                .filter(c -> inside.locate(under.centre(c)) != Location.EXTERIOR)
                .mapToDouble(c -> under.gapMm[c])
                .average()
                .orElseGet(
                        () -> Math.max(looseMm, Cavity.depthAt(damage.surfaces().voidDepthMm(), middle.x, middle.y)));
    }

    /** Beyond the edge the space goes on as deep as it is beside it, which was not mapped. */
    private double rimGapMm(Polygon area) {
        Cavity under = cavity(space.area());
        return Arrays.stream(under.cells)
                .filter(c -> area.isWithinDistance(point(under.centre(c)), RIM_MM))
                .mapToDouble(c -> under.gapMm[c])
                .average()
                .orElse(settings.thresholds().looseGapMm());
    }

    private Cavity cavity(Polygon area) {
        return Cavity.of(
                area,
                damage.face(),
                damage.surfaces().voidDepthMm(),
                Cavity.cellFor(area, Double.POSITIVE_INFINITY),
                settings.thresholds().looseGapMm());
    }

    private String advice(WayIn in, Resin resin, double lowG, double highG) {
        Spot spot = in.spot;
        if (spot == null) {
            return "No hole may be drilled here: fittings, supports or edges lie too near. Fill it from beside, or open it.";
        }
        String where = in.hole.isEmpty()
                ? String.format(Locale.ROOT, "Drill at %.0f, %.0f", spot.xMm(), spot.yMm())
                : "Drill " + in.hole + " open again";
        double cupG = settings.drilling().largestBatchG();
        return where + ", never past " + String.format(Locale.ROOT, "%.1f", in.stopMm) + " mm, and fill with "
                + resin.name() + ": " + Amounts.grams(lowG) + " if only the skin is loose, "
                + Amounts.grams(highG) + " if nothing arrived"
                + (highG > cupG ? ", in cups of " + Amounts.grams(cupG) + " at most" : "")
                + "."
                + (resin.name().equals(plan.resin())
                        ? ""
                        : " If the bit drops into empty space, mix " + plan.resin() + " as planned for " + plan.region()
                                + " instead.");
    }
}
