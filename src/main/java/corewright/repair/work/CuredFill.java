package corewright.repair.work;

import corewright.damage.DamageMap;
import corewright.damage.TapScale;
import corewright.overlay.Overlay;
import corewright.repair.plan.Amounts;
import corewright.repair.plan.EmptySpace;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SecondShot;
import corewright.survey.About;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.ReadingOverride;
import corewright.survey.ReadingOverride.Trust;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.kdtree.KdTree;

/**
 * What the taps after cure say of one filled space: how much of it was tapped, and what is still hollow.
 *
 * <p>A hollow tap makes its own ground ({@link TapCells}) a place to fill again, hollow grounds that share an edge one place
 * together. A dull tap is doubtful: its ground joins that of a hollow one beside it; alone it asks to be tapped again.
 *
 * @param region that leads the plan
 * @param space filled by the plan
 * @param places every tap over it and just outside it, in the order of the files; of several at one place the last
 * @param tappedShare of the space's area that the taps speak for
 * @param shots the largest first
 */
public record CuredFill(
        String region, String face, Polygon space, List<Place> places, double tappedShare, List<SecondShot> shots) {
    /** A fill is proven when at least this share of it was tapped. Practice. */
    public static final double PROVEN_SHARE = 0.75;

    /** Of many alike these are named, the others counted. */
    private static final int NAMED = 6;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    public CuredFill {
        places = List.copyOf(places);
        shots = List.copyOf(shots);
    }

    /**
     * A tap, what it comes to, and the ground it speaks for.
     *
     * @param shot id of the place it is part of, empty where none
     */
    public record Place(Tap tap, Sound call, Polygon area, String shot) {
        /** Dull, with nothing hollow beside it. */
        public boolean doubtful() {
            return call == Sound.DULL && shot.isEmpty();
        }
    }

    /** Every planned space that was tapped after cure, in the order of the plans; a defect costs its own space. */
    static List<CuredFill> of(Survey survey, DamageMap damage, List<InjectionPlan> plans, List<Defect> defects) {
        if (survey.readings().curedTaps().isEmpty()) {
            return List.of();
        }
        List<Surroundings> spaces = plans.stream()
                .map(p -> new Surroundings(damage, EmptySpace.of(damage, p)))
                .toList();
        Map<Surroundings, List<Tap>> taps = new HashMap<>();
        for (Tap tap : heard(survey)) {
            spaces.stream()
                    .filter(s -> Double.isFinite(s.distanceMm(tap)))
                    .min(Comparator.comparingDouble(s -> s.distanceMm(tap)))
                    .ifPresent(
                            s -> taps.computeIfAbsent(s, k -> new ArrayList<>()).add(tap));
        }
        TapScale scale = TapScale.afterCure(survey);
        List<CuredFill> fills = new ArrayList<>();
        int shots = 0;
        for (int i = 0; i < spaces.size(); i++) {
            InjectionPlan plan = plans.get(i);
            EmptySpace space = spaces.get(i).space();
            List<Tap> over = taps.getOrDefault(spaces.get(i), List.of());
            if (over.isEmpty()) {
                continue;
            }
            try {
                SecondShots planner = new SecondShots(survey, damage.face(space.face()), space, plan);
                List<Place> cells = cells(over, spaces.get(i).ground(over), scale);
                CuredFill fill = of(plan.region(), space, cells, planner, shots);
                shots += fill.shots.size();
                fills.add(fill);
            } catch (RuntimeException e) {
                defects.add(Defect.of(
                        "the fill check",
                        new About.OfRegion(plan.region(), over.get(0).spot()),
                        e));
            }
        }
        return fills;
    }

    /** Taps on the outer skin that nobody set aside; at one place the last, as places are tapped again after a second shot. */
    private static List<Tap> heard(Survey survey) {
        List<ReadingOverride> aside = survey.judgements().readings().stream()
                .filter(o -> o.trust() == Trust.SET_ASIDE)
                .toList();
        List<Tap> all = survey.readings().curedTaps();
        Map<String, KdTree> places = new HashMap<>();
        List<Tap> last = new ArrayList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            Tap tap = all.get(i);
            if (tap.side() == Side.OUTER && aside.stream().noneMatch(o -> o.concerns(tap))) {
                Spot at = tap.spot();
                KdTree heard = places.computeIfAbsent(at.face(), f -> new KdTree(Tolerances.SAME_PLACE_MM));
                if (tap.equals(heard.insert(at.coordinate(), tap).getData())) {
                    last.add(tap);
                }
            }
        }
        Collections.reverse(last);
        return last;
    }

    /** What a plan fills: its regions as one polygon. */
    public static Polygon space(DamageMap damage, InjectionPlan plan) {
        return EmptySpace.of(damage, plan).area();
    }

    private static List<Place> cells(List<Tap> taps, Geometry ground, TapScale scale) {
        return TapCells.of(taps, ground).stream()
                .map(c -> new Place(c.tap(), scale.call(c.tap()), c.area(), ""))
                .toList();
    }

    /** @param before second shots of the spaces before this one */
    private static CuredFill of(String region, EmptySpace space, List<Place> cells, SecondShots planner, int before) {
        List<Polygon> hollow = hollow(cells);
        List<Place> places = new ArrayList<>(cells);
        List<SecondShot> shots = new ArrayList<>();
        for (Polygon area : hollow) {
            String id = "S" + (before + shots.size() + 1);
            List<Tap> taps = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                Place place = places.get(i);
                if (place.call != Sound.SOUND && place.shot.isEmpty() && holds(area, place.area)) {
                    places.set(i, new Place(place.tap, place.call, place.area, id));
                    taps.add(place.tap);
                }
            }
            shots.add(planner.of(id, area, taps));
        }
        double tapped = cells.stream()
                .mapToDouble(c -> Overlay.intersection(c.area, space.area()).getArea())
                .sum();
        return new CuredFill(
                region,
                space.face(),
                space.area(),
                places,
                tapped / space.area().getArea(),
                shots);
    }

    /** Hollow ground, and dull ground that shares an edge with it, as connected places, the largest first. */
    private static List<Polygon> hollow(List<Place> cells) {
        List<Geometry> hollow = cells.stream()
                .filter(c -> c.call == Sound.HOLLOW && !c.area.isEmpty())
                .<Geometry>map(Place::area)
                .toList();
        if (hollow.isEmpty()) {
            return List.of();
        }
        List<Geometry> all = new ArrayList<>(hollow);
        cells.stream()
                .filter(c -> c.call == Sound.DULL && hollow.stream().anyMatch(h -> TapCells.shareAnEdge(h, c.area)))
                .forEach(c -> all.add(c.area));
        Geometry union = TapCells.union(all);
        List<Polygon> places = new ArrayList<>();
        for (int i = 0; i < union.getNumGeometries(); i++) {
            places.add((Polygon) union.getGeometryN(i));
        }
        places.sort(Comparator.comparingDouble((Polygon p) -> -p.getArea())
                .thenComparingDouble(p -> p.getCentroid().getX())
                .thenComparingDouble(p -> p.getCentroid().getY()));
        return places;
    }

    private static boolean holds(Polygon area, Polygon cell) {
        return !cell.isEmpty() && area.covers(cell.getInteriorPoint());
    }

    /** What of a place lies within the space that was planned. */
    public double insideMm2(SecondShot shot) {
        return Overlay.intersection(shot.area(), space).getArea();
    }

    /** Area that is to be filled again. */
    public double hollowMm2() {
        return shots.stream().mapToDouble(SecondShot::areaMm2).sum();
    }

    /** What to do: places to fill again, doubtful ones, fills that are not proven, taps that say nothing. */
    static List<Finding> findings(Survey survey, List<CuredFill> fills) {
        List<Finding> findings = new ArrayList<>();
        for (CuredFill fill : fills) {
            fill.shots.forEach(s -> findings.add(fill.finding(s)));
            fill.places.stream().filter(Place::doubtful).forEach(p -> findings.add(doubtful(p)));
            if (fill.tappedShare < PROVEN_SHARE) {
                findings.add(fill.unproven());
            }
        }
        findings.addAll(unused(survey, fills));
        return findings;
    }

    private Finding finding(SecondShot shot) {
        Tap first = places.stream()
                .filter(p -> p.shot.equals(shot.id()) && p.call == Sound.HOLLOW)
                .findFirst()
                .orElseThrow()
                .tap;
        boolean beyond = insideMm2(shot) < shot.areaMm2() / 2;
        String message = String.format(
                Locale.ROOT,
                "%s: still hollow after cure over %.3f m2 %s %s (%s).",
                shot.id(),
                shot.areaMm2() / 1e6,
                beyond ? "beyond the mapped edge of" : "of",
                shot.region(),
                String.join(", ", shot.taps()));
        return new Finding(
                Finding.Severity.DOUBT, first.origin(), About.of(first), Subject.FILL_CHECK, message, shot.advice());
    }

    private static Finding doubtful(Place place) {
        Tap tap = place.tap;
        return new Finding(
                Finding.Severity.DOUBT,
                tap.origin(),
                About.of(tap),
                Subject.FILL_CHECK,
                "Dull after cure, with nothing hollow beside it.",
                "No second shot is planned for it. Tap again closely around it.");
    }

    private Finding unproven() {
        Tap first = places.get(0).tap;
        return new Finding(
                Finding.Severity.HINT,
                first.origin(),
                new About.OfRegion(region, first.spot()),
                Subject.FILL_CHECK,
                String.format(
                        Locale.ROOT,
                        "The fill of %s was tapped after cure over %s of its area.",
                        region,
                        Amounts.percent(tappedShare)),
                "The rest is not proven. Tap at least three quarters of it (common practice), best on a grid of 40 mm.");
    }

    /** Taps over nothing that is filled, and those from below. */
    private static List<Finding> unused(Survey survey, List<CuredFill> fills) {
        List<Finding> findings = new ArrayList<>();
        List<Tap> all = survey.readings().curedTaps();
        Set<Tap> used =
                fills.stream().flatMap(f -> f.places.stream()).map(Place::tap).collect(Collectors.toSet());
        unused(
                all.stream()
                        .filter(t -> t.side() == Side.OUTER && !used.contains(t))
                        .filter(t -> fills.stream().noneMatch(f -> f.covers(t)))
                        .toList(),
                "over nothing that the plan fills",
                findings);
        unused(all.stream().filter(t -> t.side() == Side.INNER).toList(), "on the inner skin", findings);
        return findings;
    }

    private boolean covers(Tap tap) {
        return tap.spot().face().equals(face)
                && space.covers(FACTORY.createPoint(tap.spot().coordinate()));
    }

    private static void unused(List<Tap> taps, String where, List<Finding> into) {
        if (taps.isEmpty()) {
            return;
        }
        String named = taps.stream().limit(NAMED).map(Tap::id).collect(Collectors.joining(", "));
        String more = taps.size() > NAMED ? " and " + (taps.size() - NAMED) + " more" : "";
        into.add(new Finding(
                Finding.Severity.HINT,
                taps.get(0).origin(),
                new About.OfPlace(taps.get(0).spot()),
                Subject.FILL_CHECK,
                "Tapped after cure " + where + ": " + named + more + ".",
                "Not used: the fill check asks what is hollow under the outer skin where mix was planned."));
    }
}
