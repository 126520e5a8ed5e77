package corewright.report.compare;

import corewright.assessment.Assessment;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.ScaleBar;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.drawing.plates.MapPainter;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.Titles;
import corewright.survey.Face;
import corewright.survey.Heading;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;

/** One face: before, after and what changed, one scale, the same patterns. */
final class FacePage {
    private static final double CAPTION = 6;
    private static final double LABELS = 16;
    private static final double GAP = 4;
    private static final double LEAST_MAPS = 110;
    private static final Type HEAD = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type SIDE = new Type(Typeface.TEXT, 8);

    private final Comparison comparison;
    private final FaceComparison face;
    private final Face plan;
    private final RuledTable totals;
    private final RuledTable panels;
    private final String notes;

    FacePage(Comparison comparison, FaceComparison face) {
        this.comparison = comparison;
        this.face = face;
        plan = comparison.before().survey().face(face.name());
        ChangeTables tables = new ChangeTables(measure());
        totals = tables.totals(face.totals());
        panels = tables.panels(face.panels());
        notes = measure().say(notes());
    }

    private Measure measure() {
        return Measure.of(comparison.after().survey());
    }

    private String notes() {
        String own = String.join(" ", face.notes());
        String stiff = face.panels().isEmpty()
                ? ""
                : " Stiffness is calculated from the maps, at the place that was softest before; where the later readings find core"
                        + " sound it counts as the core it was built with, whatever it was mended with.";
        return Prose.plain(own + stiff);
    }

    void paint(Paper paper) {
        Heading heading = comparison.after().survey().heading();
        String name = Prose.plain(face.name());
        PageFrame.head(paper, Titles.boat(heading) + " · " + name + " · what changed", Titles.data(heading));
        double below = below();
        Box maps = new Box(
                PageFrame.LEFT,
                PageFrame.BODY + 2,
                PageFrame.FULL_WIDTH,
                Math.max(LEAST_MAPS, PageFrame.BODY_END - below - PageFrame.BODY - 2));
        maps(paper, maps);
        double y = maps.bottom() + GAP;
        y += totals.paint(paper, PageFrame.LEFT, y, 0, totals.size()) + GAP;
        if (panels.size() > 0) {
            y += panels.paint(paper, PageFrame.LEFT, y, 0, shownPanels()) + GAP;
        }
        Prose.NOTE.paint(paper, notes, PageFrame.LEFT, y, PageFrame.FULL_WIDTH, Anchor.LEFT);
    }

    /** As many panels as leave the maps their room; comparison.csv has all. */
    private int shownPanels() {
        double room = PageFrame.BODY_END - PageFrame.BODY - 2 - LEAST_MAPS - 3 * GAP - totals.height() - noteHeight();
        return panels.fitting(0, room);
    }

    private double noteHeight() {
        return notes.isEmpty() ? 0 : Prose.NOTE.height(notes, PageFrame.FULL_WIDTH) + 1;
    }

    private double below() {
        double rows = panels.size() == 0 ? 0 : partHeight(panels, shownPanels()) + GAP;
        return GAP + totals.height() + GAP + rows + noteHeight();
    }

    private static double partHeight(RuledTable table, int rows) {
        return rows == table.size() ? table.height() : table.height() * (rows + 1) / (table.size() + 1);
    }

    /** Three maps of one scale: one below the other for a long face, the first two beside each other else. */
    private void maps(Paper paper, Box room) {
        Envelope extent = plan.outline().getEnvelopeInternal();
        double high = (room.height() - 2 * GAP) / 3;
        Box rowBox = new Box(0, 0, room.width(), high);
        double half = (room.width() - GAP) / 2;
        Box halfBox = new Box(0, 0, half, (room.height() - GAP) / 2);
        boolean rows = scale(extent, rowBox) <= scale(extent, halfBox);
        double scale = rows ? scale(extent, rowBox) : scale(extent, halfBox);
        Box first = rows ? rowBox.movedTo(room.x(), room.y()) : halfBox.movedTo(room.x(), room.y());
        Box second = rows
                ? rowBox.movedTo(room.x(), first.bottom() + GAP)
                : halfBox.movedTo(first.right() + GAP, room.y());
        Box third = rows
                ? rowBox.movedTo(room.x(), second.bottom() + GAP)
                : halfBox.movedTo(room.x(), first.bottom() + GAP);
        map(paper, "Before, " + date(comparison.before().survey().heading()), comparison.before().assessment(), first, scale);
        map(paper, "After, " + date(comparison.after().survey().heading()), comparison.after().assessment(), second, scale);
        paper.text("What changed", third.x(), third.y() + HEAD.capMm() + 0.6, HEAD, Anchor.LEFT);
        double legend = rows ? 0 : half + GAP;
        double legendTop = rows ? third.y() - 0.6 : third.y() + CAPTION;
        double legendLeft = rows ? third.x() + HEAD.width("What changed") + 6 : third.x() + legend;
        ChangeMap.legend(paper, face, legendLeft, legendTop, room.right() - legendLeft);
        ChangeMap.paint(paper, plan, face, deck(third), scale);
        scaleMarks(paper, rows ? room.right() : room.right(), rows ? first.y() : third.bottom() - 8, scale);
    }

    private static String date(Heading heading) {
        return Figures.date(heading.surveyed());
    }

    private static Box deck(Box box) {
        return new Box(box.x(), box.y() + CAPTION, box.width(), box.height() - CAPTION);
    }

    private static double scale(Envelope extent, Box box) {
        Box deck = deck(box);
        return Math.ceil(Math.max(extent.getWidth() / (deck.width() - 3), extent.getHeight() / (deck.height() - LABELS)));
    }

    private void map(Paper paper, String caption, Assessment assessment, Box box, double scale) {
        paper.text(caption, box.x(), box.y() + HEAD.capMm() + 0.6, HEAD, Anchor.LEFT);
        MapPainter.paint(
                paper,
                new MapSpec(assessment, face.name(), deck(box), scale, Set.of(Layer.REGION_LABELS), MapWording.OWNER));
    }

    /** The comb, and from where one looks, ranged right. */
    private void scaleMarks(Paper paper, double right, double y, double scale) {
        ScaleBar bar = new ScaleBar(0, 0, scale, measure());
        new ScaleBar(right - bar.length() - 6, y + 3, scale, measure()).paint(paper);
        String words = "all three 1 : " + Figures.atMost(scale, 0) + ", " + Orientation.of(plan);
        List<String> lines = SIDE.wrap(words, 60);
        for (int i = 0; i < lines.size(); i++) {
            paper.text(lines.get(i), right - bar.length() - 14, y + 2 + i * SIDE.leadMm(), SIDE, Anchor.RIGHT);
        }
    }
}
