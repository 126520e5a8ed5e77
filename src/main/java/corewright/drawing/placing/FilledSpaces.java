package corewright.drawing.placing;

import corewright.contour.Raster;
import corewright.damage.Region;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.FilledHoleMark;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.ReadingMark;
import corewright.drawing.marks.WarmthMark;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.SecondShot;
import corewright.repair.work.CuredFill;
import corewright.repair.work.FillCheck;
import corewright.repair.work.WorkProgress;
import corewright.survey.Sound;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What a fill check shows of a face: the filled spaces that were felt or tapped, and what that says of them.
 *
 * @param holes planned, injection holes and vents
 */
public record FilledSpaces(List<Space> spaces, List<Hole> holes) {
    /** A region reaches the deck's edge but for rounding. */
    private static final double EDGE_MM = 1;

    /** On every other map. */
    static final FilledSpaces NONE = new FilledSpaces(List.of(), List.of());

    public FilledSpaces {
        spaces = List.copyOf(spaces);
        holes = List.copyOf(holes);
    }

    /**
     * One space.
     *
     * @param region that leads its plan
     * @param arrivalS of the simulated fill
     * @param cured empty where it was not tapped after cure
     * @param warmth readings while it cured
     */
    public record Space(
            String region,
            Polygon area,
            Optional<Raster> arrivalS,
            Optional<CuredFill> cured,
            List<FillCheck.Place> warmth) {
        public Space {
            warmth = List.copyOf(warmth);
        }

        boolean checked() {
            return cured.isPresent() || !warmth.isEmpty();
        }

        public List<SecondShot> shots() {
            return cured.map(CuredFill::shots).orElse(List.of());
        }

        public List<CuredFill.Place> taps() {
            return cured.map(CuredFill::places).orElse(List.of());
        }

        public long heard(Sound call) {
            return taps().stream().filter(p -> p.call() == call).count();
        }

        public double tappedMm2() {
            return cured.map(c -> c.tappedShare() * area.getArea()).orElse(0.0);
        }

        /** Of each place that is hollow what lies within the space. */
        public DoubleStream hollowMm2() {
            return cured.stream().flatMapToDouble(c -> c.shots().stream().mapToDouble(c::insideMm2));
        }
    }

    public static FilledSpaces of(MapSpec spec) {
        if (!spec.shows(Layer.FILL_CHECK)) {
            return NONE;
        }
        List<CuredFill> cured = spec.assessment().work().cured();
        List<WorkProgress> work = spec.assessment().work().progress();
        List<String> here = spec.damage().regions().stream().map(Region::id).toList();
        Geometry shown = spec.damage().face().outline().buffer(EDGE_MM);
        List<Space> spaces = new ArrayList<>();
        List<Hole> holes = new ArrayList<>();
        for (InjectionPlan plan : spec.assessment().decision().injections()) {
            String id = plan.region();
            Space space = new Space(
                    id,
                    CuredFill.space(spec.assessment().damage(), plan),
                    plan.fill().arrivalS(),
                    cured.stream().filter(c -> c.region().equals(id)).findFirst(),
                    work.stream()
                            .filter(w -> w.region().equals(id))
                            .flatMap(w -> w.warmth().stream())
                            .toList());
            if (here.contains(id) && space.checked() && shown.covers(space.area)) {
                spaces.add(space);
                plan.holes().stream()
                        .filter(h -> h.kind() == Hole.Kind.INJECTION || h.kind() == Hole.Kind.VENT)
                        .forEach(holes::add);
            }
        }
        return new FilledSpaces(spaces, holes);
    }

    public List<SecondShot> shots() {
        return spaces.stream().flatMap(s -> s.shots().stream()).toList();
    }

    private boolean opensAgain(Hole hole) {
        return shots().stream().anyMatch(s -> s.hole().equals(hole.id()));
    }

    /** Planned holes that second shots go in by. */
    public List<Hole> openedAgain() {
        return holes.stream().filter(this::opensAgain).toList();
    }

    /** The other planned holes, as marks. */
    List<Mark> closed(PlanView view) {
        return holes.stream()
                .filter(h -> !opensAgain(h))
                .<Mark>map(h -> new FilledHoleMark(
                        view.x(h.spot().xMm()), view.y(h.spot().yMm()), h.kind() == Hole.Kind.VENT))
                .toList();
    }

    /** Holes that second shots need and the plan has not. */
    public List<Hole> newHoles() {
        List<Hole> holes = new ArrayList<>();
        for (SecondShot shot : shots()) {
            Spot spot = shot.spot();
            if (spot != null && shot.hole().isEmpty()) {
                holes.add(new Hole(
                        shot.id(),
                        shot.region(),
                        Hole.Kind.INJECTION,
                        1,
                        spot,
                        0,
                        shot.depthStopMm(),
                        0,
                        0,
                        null,
                        Hole.Range.NONE,
                        0));
            }
        }
        return holes;
    }

    public List<FillCheck.Place> warmth() {
        return spaces.stream().flatMap(s -> s.warmth().stream()).toList();
    }

    /** Every tap as a mark, those that matter most first. */
    public List<ReadingMark> taps(PlanView view) {
        List<ReadingMark> marks = new ArrayList<>();
        for (Sound call : List.of(Sound.HOLLOW, Sound.DULL, Sound.SOUND)) {
            for (Space space : spaces) {
                space.taps().stream().filter(p -> p.call() == call).forEach(p -> {
                    Spot at = p.tap().spot();
                    int lines = call == Sound.HOLLOW ? 2 : call == Sound.DULL ? 1 : 0;
                    marks.add(new ReadingMark(
                            view.x(at.xMm()), view.y(at.yMm()), "", false, lines, ReadingMark.Trust.TAKEN));
                });
            }
        }
        return marks;
    }

    /** Every warmth reading as a mark. */
    public List<Mark> warmth(PlanView view) {
        return warmth().stream()
                .<Mark>map(p -> new WarmthMark(
                        view.x(p.reading().spot().xMm()),
                        view.y(p.reading().spot().yMm()),
                        WarmthMark.Says.of(p.verdict())))
                .toList();
    }
}
