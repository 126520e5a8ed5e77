package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.PageFrame;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.Titles;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** One face: its map and its regions as a table, running on to further pages where they are many. */
final class OwnerFacePage {
    private static final double MAP_HEIGHT = 108;
    private static final double LEGEND_WIDTH = 35;

    private final Assessment assessment;
    private final FaceDamage face;
    private final RuledTable table;

    private OwnerFacePage(Assessment assessment, FaceDamage face) {
        this.assessment = assessment;
        this.face = face;
        this.table = RegionTable.of(assessment, face);
    }

    /** The pages of a face. */
    static List<PdfFile.Painting> of(Assessment assessment, FaceDamage face) {
        OwnerFacePage page = new OwnerFacePage(assessment, face);
        List<PdfFile.Painting> pages = new ArrayList<>();
        int first = page.table.fitting(0, PageFrame.BODY_END - page.tableTop());
        pages.add(paper -> page.paintMap(paper, first));
        for (int next = first; next < page.table.size(); ) {
            int from = next;
            int count = Math.max(1, page.table.fitting(from, PageFrame.BODY_END - PageFrame.BODY - 4));
            pages.add(paper -> page.paintRest(paper, from, count));
            next += count;
        }
        return pages;
    }

    private String words() {
        if (assessment.verdict().withheld()) {
            return "No verdict is given: the first page says why." + missing();
        }
        if (face.regions().isEmpty()) {
            Coverage coverage = Coverage.of(assessment.survey(), face.face());
            return (coverage.whole() ? "No damage was found here." : Prose.plain(coverage.unread()))
                    + OwnerWords.unread(List.of(face))
                    + missing();
        }
        return "Solid edges: more probable than not. Broken edges: cannot be ruled out. Question tags: where the next"
                + " reading tells most." + OwnerWords.unread(List.of(face)) + missing();
    }

    /** Panels that could not be calculated; empty but for defects. */
    private String missing() {
        return assessment.stiffness().defects().stream()
                .filter(d -> d.about().face().equals(face.face().name()))
                .map(d -> " " + Prose.plain(d.sentence()))
                .collect(Collectors.joining());
    }

    private double mapTop() {
        return PageFrame.BODY + 2 + Prose.TEXT.height(words(), PageFrame.FULL_WIDTH) + 3;
    }

    private double tableTop() {
        return mapTop() + MAP_HEIGHT + 5;
    }

    private void paintMap(Paper paper, int rows) {
        head(paper, " · where the damage is");
        Prose.TEXT.paint(paper, words(), PageFrame.LEFT, PageFrame.BODY + 2, PageFrame.FULL_WIDTH, Anchor.LEFT);
        OwnerLegend.paint(paper, assessment, face, new Box(PageFrame.LEFT, mapTop(), LEGEND_WIDTH, MAP_HEIGHT));
        OwnerMap.paint(
                paper, assessment, face, new Box(PageFrame.ANSWERS, mapTop(), PageFrame.ANSWER_WIDTH, MAP_HEIGHT));
        if (rows > 0) {
            table.paint(paper, PageFrame.LEFT, tableTop(), 0, rows);
        }
    }

    private void paintRest(Paper paper, int from, int count) {
        head(paper, " · regions, continued");
        table.paint(paper, PageFrame.LEFT, PageFrame.BODY + 4, from, count);
    }

    private void head(Paper paper, String what) {
        var heading = assessment.survey().heading();
        String name = Prose.plain(face.face().name());
        PageFrame.head(paper, Titles.boat(heading) + " · " + name + what, Titles.data(heading));
    }
}
