package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
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

/** One face on one page: its map and its regions as a table; only very many run on to further pages. */
final class OwnerFacePage {
    private static final double MOST_MAP = 125;

    /** With legend and scale; less tells nothing. */
    private static final double LEAST_MAP = 75;

    /** Beside a table that goes on to further pages. */
    private static final double SPLIT_MAP = 108;

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

    /** The pages of a face: one, where its table leaves the map enough room. */
    static List<PdfFile.Painting> of(Assessment assessment, FaceDamage face) {
        return new OwnerFacePage(assessment, face).pages();
    }

    private List<PdfFile.Painting> pages() {
        Flow flow = new Flow(PageSize.of(assessment.survey()));
        flow.gap(1);
        flow.words(Flow.SMALL, words());
        flow.gap(2);
        double below = 3 + (table.size() == 0 ? 0 : table.height() + Flow.GAP) + safetyHeight();
        double free = flow.left() - below;
        double most = free >= LEAST_MAP ? Math.min(MOST_MAP, free) : Math.min(SPLIT_MAP, flow.left());
        double height = OwnerPlan.height(assessment, face, PageFrame.FULL_WIDTH, most);
        flow.block(
                height,
                (paper, top) -> OwnerPlan.paint(
                        paper, assessment, face, new Box(PageFrame.LEFT, top, PageFrame.FULL_WIDTH, height)));
        flow.gap(3);
        if (table.size() > 0) {
            flow.table(table);
        }
        flow.words(Prose.NOTE, safety);
        List<PdfFile.Painting> pages = new ArrayList<>();
        for (int i = 0; i < flow.pages(); i++) {
            int page = i;
            pages.add(paper -> {
                head(paper, page == 0 ? " · where the damage is" : " · regions, continued");
                flow.paint(paper, page);
            });
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

    private double safetyHeight() {
        return safety.isEmpty() ? 0 : Prose.NOTE.height(safety, PageFrame.FULL_WIDTH);
    }

    private void head(Paper paper, String what) {
        var heading = assessment.survey().heading();
        String name = Prose.plain(face.face().name());
        PageFrame.head(paper, Titles.boat(heading) + " · " + name + what, Titles.data(heading));
    }
}
