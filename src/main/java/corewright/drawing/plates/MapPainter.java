package corewright.drawing.plates;

import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.damage.Undecided;
import corewright.drawing.kit.Extents;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.marks.DatumMark;
import corewright.drawing.marks.Structure;
import corewright.drawing.marks.StructureMarks;
import corewright.drawing.placing.FilledSpaces;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.Marks;
import corewright.drawing.placing.RegionLabel;
import corewright.drawing.placing.VoiceGridMark;
import corewright.overlay.Overlay;
import corewright.repair.plan.RecorePlan;
import corewright.repair.plan.SecondShot;
import corewright.survey.Face;
import java.awt.Shape;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Paints the map of a face: patterns, edges, structure, marks, labels, in the fixed order of the package comment. */
public final class MapPainter {
    /** On work drawings of 1 : 10 and larger the pattern is a band inside the edge; the middle is for holes and hand. */
    private static final double BAND_FROM_SCALE = 10;

    private static final double BAND = 5;
    private static final double POSSIBLE_CASING = 0.9;

    /** A line pair is two skins apart, here as on the other maps. */
    static final Pattern STILL_HOLLOW = Pattern.DELAMINATED;

    /** Quieter than the edge of what is hollow. */
    static final Pen FILLED = Pen.MARK;

    private final Paper paper;
    private final MapSpec spec;
    private final MapLayout layout;
    private final PlanView view;
    private final FaceDamage damage;

    private MapPainter(Paper paper, MapLayout layout) {
        this.paper = paper;
        this.layout = layout;
        this.spec = layout.spec();
        this.view = layout.view();
        this.damage = spec.damage();
    }

    /**
     * What came of it.
     *
     * @param scale survey millimetres to one of paper
     * @param readingsShown those there was room for
     * @param scaleAndUphill comb and ramp found a free corner; else the sheet must say both elsewhere
     * @param unlabelled regions whose words found no room: only their ids stand on the map
     */
    public record Painted(
            double scale, int readingsShown, int readingsTotal, boolean scaleAndUphill, List<String> unlabelled) {
        public Painted {
            unlabelled = List.copyOf(unlabelled);
        }
    }

    /** Lays out and paints. */
    public static Painted paint(Paper paper, MapSpec spec) {
        MapLayout layout = MapLayout.of(spec);
        paint(paper, layout);
        List<String> unlabelled = layout.labels().stream()
                .filter(l -> !l.led())
                .map(RegionLabel::region)
                .toList();
        return new Painted(
                layout.view().scale(),
                layout.readings().size(),
                layout.readingsTotal(),
                !layout.sheetMarks().isEmpty(),
                unlabelled);
    }

    /** Paints what is laid out. */
    static void paint(Paper paper, MapLayout layout) {
        paper.figure(told(layout), p -> new MapPainter(p, layout).paint());
    }

    /** The map in words. */
    private static String told(MapLayout layout) {
        FaceDamage damage = layout.spec().damage();
        StringBuilder words = new StringBuilder("Plan of " + damage.face().name() + ", 1 : "
                + Figures.fixed(layout.view().scale(), 0) + ", " + Orientation.of(damage.face()) + ".");
        for (Region region : damage.regions()) {
            words.append(' ')
                    .append(region.id())
                    .append(": ")
                    .append(region.condition().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .append(", ")
                    .append(layout.spec().measure().area(region.likely().getArea()))
                    .append('.');
        }
        int undecided = damage.undecided().size();
        words.append(
                undecided == 0 ? "" : " Not decided yet: " + undecided + (undecided == 1 ? " place." : " places."));
        int readings = layout.readings().size();
        words.append(readings == 0 ? "" : " Readings shown: " + readings + ".");
        return words.toString();
    }

    private void paint() {
        if (spec.shows(Layer.VOICE_GRID)) {
            VoiceGridMark.paint(paper, layout.grid(), view, layout.gridArea(), layout.rowNamesX());
        }
        if (spec.shows(Layer.FILL_CHECK)) {
            filled();
        } else {
            patterns();
            edges();
        }
        structure();
        marks();
        layout.names().forEach(n -> n.paint(paper));
        layout.labels().forEach(l -> l.paintLeader(paper));
        layout.marks().tags().forEach(m -> m.paint(paper)); // a leader may run behind a question, not across it
        layout.labels().forEach(l -> l.paintWords(paper));
        layout.sheetMarks().forEach(m -> m.paint(paper));
    }

    private void filled() {
        for (FilledSpaces.Space space : layout.filled().spaces()) {
            paper.draw(PlanView.shape(Pattern.drawn(view.onPaper(space.area()))), FILLED);
        }
        layout.fronts().forEach(f -> f.paint(paper));
        for (SecondShot shot : layout.filled().shots()) {
            Polygon area = view.onPaper(shot.area());
            STILL_HOLLOW.paint(paper, area, view.datum());
            paper.draw(PlanView.shape(Pattern.drawn(area)), Pen.LIKELY);
        }
    }

    private void patterns() {
        for (Undecided undecided : damage.undecided()) {
            Polygon area = view.onPaper(undecided.area());
            Pattern.UNDECIDED.paint(paper, area, view.datum());
            paper.draw(PlanView.shape(area), Pen.UNDECIDED);
        }
        for (Region region : damage.regions()) {
            Polygon area = view.onPaper(region.likely());
            Pattern pattern = Pattern.of(region.condition());
            pattern.paint(paper, banded(Pattern.drawn(area)), pattern.anchor(area, view.datum()));
        }
    }

    private Geometry banded(Geometry area) {
        boolean work = spec.shows(Layer.HOLES) && view.scale() <= BAND_FROM_SCALE;
        return work ? Overlay.difference(area, area.buffer(-BAND)) : area;
    }

    private void edges() {
        for (Region region : damage.regions()) {
            paper.draw(PlanView.shape(Pattern.drawn(view.onPaper(region.likely()))), Pen.LIKELY);
        }
        for (LineString line : Extents.possible(damage, view)) {
            Shape shape = PlanView.shape(line);
            paper.casing(shape, POSSIBLE_CASING);
            paper.draw(shape, Pen.POSSIBLE);
        }
    }

    private void structure() {
        Face face = damage.face();
        if (spec.part() == null) {
            Structure.coreEdge(paper, view, damage);
            Structure.paint(paper, view, face, Structure.Shows.ALL);
        } else {
            Structure.paintPart(paper, view, face, spec.whole().face());
        }
        if (spec.shows(Layer.CUTS)) {
            for (RecorePlan plan : spec.assessment().decision().recores()) {
                if (damage.regions().stream().anyMatch(r -> r.id().equals(plan.region()))) {
                    StructureMarks.cut(paper, view.onPaper(plan.cut()));
                }
            }
        }
    }

    private void marks() {
        Marks marks = layout.marks();
        layout.readings().forEach(m -> m.paint(paper));
        if (spec.shows(Layer.BACKING)) {
            Structure.keepOuts(paper, view, damage.face());
        }
        marks.fittings().forEach(m -> m.paint(paper));
        marks.probes().forEach(m -> m.paint(paper));
        marks.holes().forEach(m -> m.paint(paper));
        layout.holeLabels().forEach(m -> m.paint(paper));
        DatumMark datum = layout.datum();
        if (datum != null) {
            datum.paint(paper);
        }
    }
}
