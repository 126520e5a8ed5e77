package corewright.drawing.screen;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.damage.Surfaces;
import corewright.damage.Undecided;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Extents;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.kit.VoiceGrid;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.PhotoMark;
import corewright.drawing.marks.ReadingMark;
import corewright.drawing.marks.Structure;
import corewright.drawing.marks.StructureMarks;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.Lettering;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.RegionLabel;
import corewright.drawing.placing.SheetMarks;
import corewright.drawing.placing.VoiceGridMark;
import corewright.overlay.Overlay;
import corewright.survey.Face;
import corewright.survey.Photo;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * The plan of a face in a window: where everything goes is worked out once for a place of the plan, painting it in another
 * appearance or with another region selected is quick.
 *
 * <p>Marks and words have the size of {@link #PX_PER_MM} pixels a paper millimetre, which makes the smallest figure 12
 * pixels tall; patterns are finer, at {@link #PATTERN_PX_PER_MM}.
 */
public final class ScreenMap {
    /** At 100 % scaling: 6.5 pt then is 12 px, which is read at arm's length. */
    public static final double PX_PER_MM = 5.2;

    private static final double PATTERN_PX_PER_MM = 3.2;
    private static final int NEXT_SHOWN = 4;

    /** Patterns are bands of this width from this scale on, as on work drawings: the middle belongs to holes. */
    private static final double BAND = 5;

    private static final double BAND_FROM_SCALE = 10;

    /** Of 255: how much of a tint is left where the middle belongs to holes. */
    private static final int PALE = 45;

    private static final double HELD_PX = 4;
    private static final double CASING_PX = 8;

    /** Moisture index at which the wash is deepest: twice the step from dry to wet. */
    private static final double WETTEST = 200;

    /** A window drawn this small is on its way to another size. */
    /** For the ramp and the scale bar, which otherwise find no free corner in a low window. */
    private static final double FOOT_MM = 8;

    private static final double LEAST_MM = 10;

    private final MapLayout layout;
    private final Set<ScreenLayer> layers;
    private final boolean banded;
    private final List<LineString> possible;
    private final PlanView view;
    private final FaceDamage damage;

    /**
     * What is seen of a face.
     *
     * @param box the window's plan in paper millimetres
     * @param view where the plan lies in it
     * @param work holes are in hand: where the plan is close, patterns leave the middle to them
     */
    public record Seen(
            String face, Box box, PlanView view, Set<ScreenLayer> layers, Lettering lettering, boolean work) {
        public Seen {
            layers = Set.copyOf(layers);
        }

        boolean shows(ScreenLayer layer) {
            return layers.contains(layer);
        }
    }

    private ScreenMap(MapLayout layout, Seen seen) {
        this.layout = layout;
        this.layers = seen.layers();
        this.view = seen.view();
        this.banded = seen.work() && view.scale() <= BAND_FROM_SCALE;
        this.damage = layout.spec().damage();
        this.possible = layers.contains(ScreenLayer.POSSIBLE) ? Extents.possible(damage, view) : List.of();
    }

    /** Works out where everything goes. */
    public static ScreenMap layOut(Assessment assessment, Seen seen) {
        Set<Layer> paper = EnumSet.of(Layer.VOICE_GRID, Layer.SCALE_AND_UPHILL, Layer.DATUM);
        if (seen.shows(ScreenLayer.READINGS) || seen.shows(ScreenLayer.TAPS)) {
            paper.add(Layer.READINGS);
        }
        if (seen.shows(ScreenLayer.PROBES)) {
            paper.add(Layer.PROBES);
        }
        if (seen.shows(ScreenLayer.NEXT)) {
            paper.add(Layer.NEXT);
        }
        if (seen.shows(ScreenLayer.STRUCTURE)) {
            paper.add(Layer.BACKING);
            paper.add(Layer.FEATURE_NAMES);
        }
        if (seen.shows(ScreenLayer.LABELS)) {
            paper.add(Layer.REGION_LABELS);
        }
        if (seen.shows(ScreenLayer.DEEDS) && assessment.ages().fresh()) { // regions may have been numbered anew else
            paper.addAll(EnumSet.of(Layer.METHODS, Layer.HOLES, Layer.CUTS));
        }
        if (seen.work() && assessment.ages().fresh()) {
            paper.add(Layer.HELD_HOLES);
        }
        MapSpec spec = new MapSpec(
                withFewNext(assessment, seen.face()),
                seen.face(),
                seen.box(),
                seen.view().scale(),
                paper,
                seen.lettering());
        return new ScreenMap(MapLayout.seen(spec, seen.view()), seen);
    }

    /** A screen is read while working: the few most telling places, so that tags do not cover what they ask about. */
    private static Assessment withFewNext(Assessment assessment, String face) {
        return assessment.withNext(assessment.next().stream()
                .filter(n -> n.spot().face().equals(face))
                .limit(NEXT_SHOWN)
                .toList());
    }

    /** The view in which the whole face lies in the middle of the box, with room for letters, names, labels and the scale at the foot. */
    public static PlanView fitting(Face face, Box box) {
        var extent = face.outline().getEnvelopeInternal();
        double across = Math.max(LEAST_MM, box.width() - 24);
        double down = Math.max(LEAST_MM, box.height() - 2 * VoiceGridMark.MARGIN - 6 - FOOT_MM);
        double scale = Math.max(extent.getWidth() / across, extent.getHeight() / down);
        return PlanView.centred(face, extent, scale, box.middleX(), box.middleY() - FOOT_MM / 2);
    }

    /** Readings there is room for at this size, and all there are. */
    public String readingsShown() {
        return layout.readings().size() + " of " + layout.readingsTotal();
    }

    /** Paints on a graphics whose unit is one pixel, origin at the plan's upper left corner. */
    public void paint(Graphics2D pixels, ScreenLook look, String selected) {
        Graphics2D g = (Graphics2D) pixels.create();
        Box box = layout.spec().box();
        Rectangle2D seen = box.shape();
        g.setColor(look.tone().ground());
        g.fill(new Rectangle2D.Double(0, 0, (box.x() + box.width()) * PX_PER_MM, (box.y() + box.height()) * PX_PER_MM));
        g.scale(PX_PER_MM, PX_PER_MM);
        g.clip(seen);
        Paper paper = new Paper(g, look.tone());
        surface(g, look);
        grid(paper);
        patterns(g, look, seen);
        edges(paper);
        structure(paper);
        selected(g, look, selected);
        marks(paper);
        layout.names().forEach(n -> n.paint(paper));
        labels(paper, new Paper(g, look.selected()), selected);
        sheet(paper, box);
        g.dispose();
    }

    private void surface(Graphics2D g, ScreenLook look) {
        Surfaces s = damage.surfaces();
        if (layers.contains(ScreenLayer.MOISTURE)) {
            SurfaceImage.paint(g, s.moistureIndex(), WETTEST, view, look.tone());
        } else if (layers.contains(ScreenLayer.STANDARD_ERROR)) {
            SurfaceImage.paint(g, s.moistureIndexSd(), WETTEST / 2, view, look.tone());
        } else if (layers.contains(ScreenLayer.VOID_DEPTH)) {
            SurfaceImage.paint(g, s.voidDepthMm(), deepest(s), view, look.tone());
        }
    }

    private static double deepest(Surfaces s) {
        double most = 1;
        for (int i = 0; i < s.voidDepthMm().size(); i++) {
            double depth = s.voidDepthMm().at(i);
            most = Double.isNaN(depth) ? most : Math.max(most, depth);
        }
        return most;
    }

    /** Letters and row names keep to the window's edges while the plan moves. */
    private void grid(Paper paper) {
        Box box = layout.spec().box();
        VoiceGrid grid = layout.grid();
        double nameX = Math.min(layout.rowNamesX(), box.right() - 2.2);
        for (VoiceGrid.Strip column : grid.columns()) {
            double from = Math.max(view.x(column.from()), box.x());
            double to = Math.min(view.x(column.to()), box.right());
            if (to - from > 4) {
                paper.text(column.name(), (from + to) / 2, box.y() + 3.9, Type.LABEL_BOLD, Paper.Anchor.CENTRE);
            }
            if (view.x(column.from()) > box.x()) {
                paper.line(Pen.GRID, view.x(column.from()), box.y() + 4.5, view.x(column.from()), box.bottom() - 1);
            }
        }
        Type type = new Type(Typeface.CONDENSED_SEMIBOLD, 7);
        for (VoiceGrid.Strip row : grid.rows()) {
            double top = Math.max(Math.min(view.y(row.from()), view.y(row.to())), box.y() + 8);
            double foot = Math.min(Math.max(view.y(row.from()), view.y(row.to())), box.bottom());
            String name = row.shortName();
            if (foot - top > type.width(name)) {
                paper.turnedText(
                        name, nameX - type.capMm() / 2, (top + foot) / 2, Math.PI / 2, type, Paper.Anchor.CENTRE);
            }
            if (row.from() > grid.extent().getMinY()) {
                paper.line(
                        Pen.GRID,
                        Math.max(view.x(grid.extent().getMinX()), box.x()),
                        view.y(row.from()),
                        Math.min(view.x(grid.extent().getMaxX()), box.right()),
                        view.y(row.from()));
            }
        }
    }

    private void patterns(Graphics2D g, ScreenLook look, Rectangle2D seen) {
        ScreenPattern pattern = new ScreenPattern(g, PATTERN_PX_PER_MM / PX_PER_MM, view.datum());
        Color ink = look.tone().ink();
        if (layers.contains(ScreenLayer.UNDECIDED)) {
            for (Undecided undecided : damage.undecided()) {
                pattern.fill(Pattern.UNDECIDED, shape(undecided.area()), seen, ink);
            }
        }
        for (Region region : damage.regions()) {
            if (shows(region.condition())) {
                Shape area = shape(region.likely());
                Color tint = look.tints().get(region.condition());
                if (tint != null && layers.stream().noneMatch(ScreenLayer::surface)) {
                    g.setColor(banded ? pale(tint) : tint);
                    g.fill(area);
                }
                pattern.fill(Pattern.of(region.condition()), banded ? band(region.likely()) : area, seen, ink);
            }
        }
    }

    private static Color pale(Color tint) {
        return new Color(tint.getRed(), tint.getGreen(), tint.getBlue(), PALE);
    }

    private Shape band(Polygon onFace) {
        Polygon area = view.onPaper(onFace);
        return PlanView.shape(Overlay.difference(area, area.buffer(-BAND)));
    }

    private boolean shows(Condition condition) {
        return switch (condition) {
            case WET -> layers.contains(ScreenLayer.WET);
            case DELAMINATED -> layers.contains(ScreenLayer.DELAMINATED);
            case WET_DELAMINATED -> layers.contains(ScreenLayer.WET_DELAMINATED);
            case VOID -> layers.contains(ScreenLayer.VOID);
            case SOUND -> false;
        };
    }

    private void edges(Paper paper) {
        if (layers.contains(ScreenLayer.UNDECIDED)) {
            damage.undecided().forEach(u -> paper.draw(shape(u.area()), Pen.UNDECIDED));
        }
        if (layers.contains(ScreenLayer.LIKELY)) {
            damage.regions().stream()
                    .filter(r -> shows(r.condition()))
                    .forEach(r -> paper.draw(shape(r.likely()), Pen.MARK));
        }
        for (LineString line : possible) {
            Shape shape = PlanView.shape(line);
            paper.casing(shape, 0.9);
            paper.draw(shape, Pen.POSSIBLE);
        }
    }

    private void structure(Paper paper) {
        boolean supports = layers.contains(ScreenLayer.STRUCTURE);
        Structure.coreEdge(paper, view, damage);
        Structure.paint(paper, view, damage.face(), supports ? Structure.Shows.ALL : Structure.Shows.NO_SUPPORTS);
        if (layout.spec().shows(Layer.CUTS)) {
            layout.spec().assessment().decision().recores().stream()
                    .filter(p -> damage.regions().stream().anyMatch(r -> r.id().equals(p.region())))
                    .forEach(p -> StructureMarks.cut(paper, view.onPaper(p.cut())));
        }
    }

    /** Crayon on a casing of paper: crayon alone has no contrast on void. */
    private void selected(Graphics2D g, ScreenLook look, String selected) {
        for (Region region : damage.regions()) {
            if (region.id().equals(selected)) {
                Shape edge = shape(region.likely());
                g.setColor(look.tone().ground());
                g.setStroke(new BasicStroke((float) (CASING_PX / PX_PER_MM), 1, 1));
                g.draw(edge);
                g.setColor(look.crayon());
                g.setStroke(new BasicStroke((float) (HELD_PX / PX_PER_MM), 1, 1));
                g.draw(edge);
            }
        }
    }

    private void marks(Paper paper) {
        boolean figures = layers.contains(ScreenLayer.READINGS);
        boolean taps = layers.contains(ScreenLayer.TAPS);
        for (ReadingMark m : layout.readings()) {
            String text = figures ? m.text() : "";
            int lines = taps ? m.lines() : 0;
            boolean left =
                    !text.isEmpty() || (taps && (m.lines() > 0 || m.text().isEmpty()));
            if (left) {
                new ReadingMark(m.x(), m.y(), text, m.offScale(), lines, m.trust()).paint(paper);
            }
        }
        if (layers.contains(ScreenLayer.STRUCTURE)) {
            Structure.keepOuts(paper, view, damage.face());
            layout.marks().fittings().forEach(m -> m.paint(paper));
        }
        layout.marks().probes().forEach(m -> m.paint(paper));
        layout.marks().holes().forEach(m -> m.paint(paper));
        layout.marks().tags().forEach(m -> m.paint(paper));
        if (layers.contains(ScreenLayer.PHOTOGRAPHS)) {
            layout.spec().assessment().survey().photos().stream()
                    .map(Photo::spot)
                    .filter(s -> s.face().equals(damage.face().name()))
                    .forEach(s -> new PhotoMark(view.x(s.xMm()), view.y(s.yMm())).paint(paper));
        }
    }

    private void labels(Paper paper, Paper crayon, String selected) {
        for (RegionLabel label : layout.labels()) {
            label.paintLeader(label.region().equals(selected) ? crayon : paper);
        }
        for (RegionLabel label : layout.labels()) {
            label.paintWords(label.region().equals(selected) ? crayon : paper);
        }
    }

    private void sheet(Paper paper, Box box) {
        List<Mark> marks = layout.sheetMarks();
        if (marks.isEmpty()) {
            marks = SheetMarks.at(layout.spec(), view, box.x() + 3, box.bottom() - 3);
            for (Mark mark : marks) {
                paper.fill(mark.box().grown(1.2).shape(), Tone.WHITE);
            }
        }
        marks.forEach(m -> m.paint(paper));
    }

    private Shape shape(Polygon onFace) {
        return PlanView.shape(view.onPaper(onFace));
    }
}
