package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.PageFrame;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.Titles;
import corewright.survey.Defect;
import corewright.survey.Finding;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One face: its map and its regions as a table, running on to further pages where they are many. */
final class OwnerFacePage {
    private static final double MAP_HEIGHT = 108;
    private static final double LEGEND_WIDTH = 35;

    private final Assessment assessment;
    private final FaceDamage face;
    private final RuledTable table;
    private final String safety;

    private OwnerFacePage(Assessment assessment, FaceDamage face) {
        this.assessment = assessment;
        this.face = face;
        this.table = RegionTable.of(assessment, face);
        String name = face.face().name();
        String full = assessment.verdict().withheld()
                ? ""
                : assessment.safety(r -> r.face().equals(name)).full();
        this.safety = full.isEmpty() ? "" : Prose.bold("Who works on it.") + " " + full;
    }

    /** The pages of a face. */
    static List<PdfFile.Painting> of(Assessment assessment, FaceDamage face) {
        OwnerFacePage page = new OwnerFacePage(assessment, face);
        List<PdfFile.Painting> pages = new ArrayList<>();
        double end = PageFrame.BODY_END - page.safetyHeight();
        int first = page.table.fitting(0, end - page.tableTop());
        pages.add(paper -> page.paintMap(paper, first));
        for (int next = first; next < page.table.size(); ) {
            int from = next;
            int count = Math.max(1, page.table.fitting(from, end - PageFrame.BODY - 4));
            pages.add(paper -> page.paintRest(paper, from, count));
            next += count;
        }
        return pages;
    }

    private String words() {
        return Measure.of(assessment.survey()).say(metric());
    }

    private String metric() {
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

    /** What is missing of panels and why, a sentence each; empty where nothing is. */
    private String missing() {
        Stream<String> unfit = assessment.stiffness().findings().stream()
                .filter(f -> f.subject() == Subject.PANEL_LEFT_OUT)
                .filter(f -> f.about().face().equals(face.face().name()))
                .map(Finding::message);
        Stream<String> failed = Stream.of(
                        assessment.stiffness().defects(), assessment.gains().defects())
                .flatMap(List::stream)
                .filter(d -> d.about().face().equals(face.face().name()))
                .map(Defect::sentence);
        return Stream.concat(unfit, failed).map(s -> " " + Prose.plain(s)).collect(Collectors.joining());
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
        double y = tableTop() + (rows > 0 ? table.paint(paper, PageFrame.LEFT, tableTop(), 0, rows) : 0);
        cautions(paper, rows, y + 3);
    }

    /** Under the last row; the rows leave room for it. */
    private void cautions(Paper paper, int told, double top) {
        if (told == table.size()) {
            Prose.NOTE.paint(paper, safety, PageFrame.LEFT, top, PageFrame.FULL_WIDTH, Anchor.LEFT);
        }
    }

    private double safetyHeight() {
        return safety.isEmpty() ? 0 : 3 + Prose.NOTE.height(safety, PageFrame.FULL_WIDTH);
    }

    private void paintRest(Paper paper, int from, int count) {
        head(paper, " · regions, continued");
        double y = PageFrame.BODY + 4;
        y += table.paint(paper, PageFrame.LEFT, y, from, count);
        cautions(paper, from + count, y + 3);
    }

    private void head(Paper paper, String what) {
        var heading = assessment.survey().heading();
        String name = Prose.plain(face.face().name());
        PageFrame.head(paper, Titles.boat(heading) + " · " + name + what, Titles.data(heading));
    }
}
