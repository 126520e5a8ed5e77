package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.RangeBar;
import corewright.report.page.RuledTable;
import corewright.report.page.SensitivityWords;
import corewright.report.page.Titles;
import corewright.report.page.Wording;
import java.util.ArrayList;
import java.util.List;

/** What is wrong place by place, how sure that is, what happens if it is left, and the choices side by side. */
final class OwnerChoicesPage {
    /** Places told one by one; the table of each face has all. */
    private static final int TOLD = 3;

    private static final double BAR_WIDTH = 58;
    private static final double BETWEEN = 1;

    private final Assessment assessment;
    private final Measure measure;

    private OwnerChoicesPage(Assessment assessment) {
        this.assessment = assessment;
        measure = Measure.of(assessment.survey());
    }

    static List<PdfFile.Painting> of(Assessment assessment) {
        return new OwnerChoicesPage(assessment).pages();
    }

    private List<PdfFile.Painting> pages() {
        Flow flow = new Flow(PageSize.of(assessment.survey()));
        flow.answer("What is wrong", measure.say(OwnerWords.wrong(assessment, TOLD)));
        sure(flow);
        flow.answer("If it is left", measure.say(OwnerWords.left(assessment)));
        RuledTable table = ChoiceTable.of(assessment);
        flow.table("What can be done", table);
        flow.words(Prose.NOTE, OwnerWords.costs(assessment) + " " + new SensitivityWords(assessment).inShort());
        flow.gap(Flow.GAP);
        ChoiceChart.of(flow, assessment);
        flow.answer("What we recommend", measure.say(OwnerWords.recommended(assessment)));
        List<PdfFile.Painting> pages = new ArrayList<>();
        for (int i = 0; i < flow.pages(); i++) {
            int page = i;
            pages.add(paper -> {
                var heading = assessment.survey().heading();
                PageFrame.head(
                        paper,
                        Titles.boat(heading) + " · what can be done" + (page == 0 ? "" : ", continued"),
                        Titles.data(heading));
                flow.paint(paper, page);
            });
        }
        return pages;
    }

    private record Range(String what, Quantiles range, String unit) {}

    private void sure(Flow flow) {
        List<Range> bars = new ArrayList<>();
        if (assessment.survey().readings().coreSeen()) {
            Quantiles empty = assessment.damage().voidMm3().times(measure.volume(1));
            bars.add(new Range("Empty space under the skin.", empty, " " + measure.volumeUnit()));
        }
        Quantiles damaged = assessment.damage().damagedMm2().times(measure.areaOf(1));
        bars.add(new Range("Damaged core.", damaged, " " + measure.areaUnit()));
        bars.removeIf(b -> !(b.range.p90() > 0));
        String doubt = measure.say(OwnerWords.doubt(assessment));
        double height = bars.size() * (RangeBar.HEIGHT_MM + BETWEEN);
        flow.block(2 * Flow.GAP + height + Prose.NOTE.height(doubt, PageFrame.ANSWER_WIDTH), (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, "How sure we are", top + Flow.GAP);
            double y = top + Flow.GAP;
            for (Range bar : bars) {
                paint(paper, bar, y);
                y += RangeBar.HEIGHT_MM + BETWEEN;
            }
            Prose.NOTE.paint(paper, doubt, PageFrame.ANSWERS, y, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
        });
    }

    private static void paint(Paper paper, Range bar, double top) {
        int decimals = Wording.decimals(bar.range);
        String words = Prose.bold(bar.what) + " Most likely " + Figures.fixed(bar.range.p50(), decimals) + bar.unit
                + "; in 8 cases of 10 between " + Figures.fixed(bar.range.p10(), decimals) + " and "
                + Figures.fixed(bar.range.p90(), decimals) + ".";
        paper.figure(
                "The same range as a bar on an axis from nought.",
                p -> RangeBar.paint(p, bar.range, bar.unit, PageFrame.ANSWERS, top, BAR_WIDTH));
        double left = PageFrame.ANSWERS + BAR_WIDTH + 5;
        double height = Prose.NOTE.height(words, PageFrame.RIGHT - left);
        Prose.NOTE.paint(
                paper, words, left, top + (RangeBar.HEIGHT_MM - height) / 2, PageFrame.RIGHT - left, Anchor.LEFT);
    }
}
