package corewright.report.compare;

import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.Titles;
import corewright.survey.Heading;

/** One face: before, after and what changed, one scale, the same patterns. */
final class FacePage {
    private static final double GAP = 4;
    private static final double LEAST_MAPS = 110;

    private final Comparison comparison;
    private final FaceComparison face;
    private final RuledTable totals;
    private final RuledTable panels;
    private final String notes;
    private final double end;

    FacePage(Comparison comparison, FaceComparison face) {
        this.comparison = comparison;
        this.face = face;
        ChangeTables tables = new ChangeTables(measure());
        totals = tables.totals(face.totals());
        panels = tables.panels(face.panels());
        notes = measure().say(notes());
        end = PageSize.of(comparison.after().survey()).bodyEnd();
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
                Math.max(LEAST_MAPS, end - below - PageFrame.BODY - 2));
        new FaceMaps(comparison, face).paint(paper, maps);
        double y = maps.bottom() + GAP;
        y += totals.paint(paper, PageFrame.LEFT, y, 0, totals.size()) + GAP;
        if (panels.size() > 0) {
            y += panels.paint(paper, PageFrame.LEFT, y, 0, shownPanels()) + GAP;
        }
        Prose.NOTE.paint(paper, notes, PageFrame.LEFT, y, PageFrame.FULL_WIDTH, Anchor.LEFT);
    }

    /** As many panels as leave the maps their room; comparison.csv has all. */
    private int shownPanels() {
        double room = end - PageFrame.BODY - 2 - LEAST_MAPS - 3 * GAP - totals.height() - noteHeight();
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
}
