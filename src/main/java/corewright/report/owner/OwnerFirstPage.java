package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.decision.Safety;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.RangeBar;
import corewright.report.page.RuledTable;
import corewright.report.page.Titles;
import corewright.report.page.Wording;

/** The answer on one page: what is wrong, how sure that is, what can be done, what to do now. */
final class OwnerFirstPage {
    private static final double GAP = 2.6;
    private static final double BAR_WIDTH = 58;
    private static final double LEAST_MAP = 70;
    private static final double MOST_MAP = 104;
    private static final double LEGEND_WIDTH = 35;

    private final Assessment assessment;
    private final FaceDamage face;
    private final Measure measure;
    private final String title;
    private final String now;
    private final String safety;
    private final String doubt;
    private final String costs;
    private final RuledTable choices;
    private final Quantiles damaged;
    private final Quantiles empty;

    OwnerFirstPage(Assessment assessment) {
        this.assessment = assessment;
        face = OwnerTitle.worst(assessment);
        measure = Measure.of(assessment.survey());
        title = Prose.bold(measure.say(OwnerTitle.of(assessment)));
        now = measure.say(OwnerWords.now(assessment));
        safety = assessment.verdict().withheld() ? "" : brief(assessment.safety(r -> true));
        doubt = measure.say(OwnerWords.doubt(assessment));
        costs = OwnerWords.costs(assessment);
        choices = ChoiceTable.of(assessment, ChoiceTable.stiffness(assessment));
        damaged = assessment.damage().damagedMm2().times(measure.areaOf(1));
        boolean measured = assessment.survey().readings().coreSeen();
        empty = measured ? assessment.damage().voidMm3().times(measure.volume(1)) : Quantiles.ZERO;
    }

    /** In short; the pages of the faces have it in full. */
    private static String brief(Safety safety) {
        return safety.none() ? "" : Wording.sentence(safety.brief()) + ".";
    }

    void paint(Paper paper) {
        String faces = assessment.damage().faces().size() == 1
                ? " · " + Prose.plain(face.face().name())
                : "";
        var heading = assessment.survey().heading();
        PageFrame.head(paper, Titles.boat(heading) + faces + " · report to the owner", Titles.data(heading));
        double y = PageFrame.BODY + 1;
        y += Prose.TITLE.paint(paper, title, PageFrame.LEFT, y, PageFrame.FULL_WIDTH, Anchor.LEFT) + 2;
        double below = sureHeight() + choicesHeight() + nowHeight();
        String wrong = wrong(y, below);
        y += question(paper, "What is wrong", wrong, y) + GAP;
        double room = PageFrame.BODY_END - below - y;
        if (room >= LEAST_MAP) {
            map(paper, y, Math.min(MOST_MAP, room));
            y += Math.min(MOST_MAP, room);
        }
        y += sure(paper, y);
        y += choices(paper, y);
        y += question(paper, "What to do now", now, y + GAP) + GAP;
        if (!safety.isEmpty()) {
            PageFrame.hairline(paper, y);
            PageFrame.question(paper, "Who works on it", y + GAP);
            Prose.NOTE.paint(paper, safety, PageFrame.ANSWERS, y + GAP + 0.6, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
        }
    }

    /** As many places told as leave the map its room. */
    private String wrong(double top, double below) {
        for (int told = 4; told > 2; told--) {
            String words = measure.say(OwnerWords.wrong(assessment, told));
            double height = Prose.TEXT.height(words, PageFrame.ANSWER_WIDTH);
            if (top + height + GAP + LEAST_MAP + below <= PageFrame.BODY_END) {
                return words;
            }
        }
        return measure.say(OwnerWords.wrong(assessment, 3)) + " The next page has the map.";
    }

    private static double question(Paper paper, String question, String answer, double top) {
        PageFrame.question(paper, question, top);
        return Prose.TEXT.paint(paper, answer, PageFrame.ANSWERS, top, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
    }

    private void map(Paper paper, double top, double height) {
        OwnerLegend.paint(paper, assessment, face, new Box(PageFrame.LEFT, top, LEGEND_WIDTH, height));
        OwnerMap.paint(paper, assessment, face, new Box(PageFrame.ANSWERS, top, PageFrame.ANSWER_WIDTH, height));
    }

    private double sureHeight() {
        return GAP + bars() * (RangeBar.HEIGHT_MM + 1) + Prose.NOTE.height(doubt, PageFrame.ANSWER_WIDTH) + GAP;
    }

    private int bars() {
        return (empty.p90() > 0 ? 1 : 0) + (damaged.p90() > 0 ? 1 : 0);
    }

    private double sure(Paper paper, double top) {
        PageFrame.hairline(paper, top);
        double y = top + GAP;
        PageFrame.question(paper, "How sure we are", y);
        if (empty.p90() > 0) {
            y += range(paper, "Empty space under the skin.", empty, " " + measure.volumeUnit(), y);
        }
        if (damaged.p90() > 0) {
            y += range(paper, "Damaged core.", damaged, " " + measure.areaUnit(), y);
        }
        Prose.NOTE.paint(paper, doubt, PageFrame.ANSWERS, y, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
        return sureHeight();
    }

    private static double range(Paper paper, String what, Quantiles range, String unit, double top) {
        RangeBar.paint(paper, range, unit, PageFrame.ANSWERS, top, BAR_WIDTH);
        int decimals = Wording.decimals(range);
        String words = Prose.bold(what) + " Most likely " + Figures.fixed(range.p50(), decimals) + unit
                + "; in 8 cases of 10 between " + Figures.fixed(range.p10(), decimals) + " and "
                + Figures.fixed(range.p90(), decimals) + ".";
        double left = PageFrame.ANSWERS + BAR_WIDTH + 5;
        double height = Prose.NOTE.height(words, PageFrame.RIGHT - left);
        Prose.NOTE.paint(
                paper, words, left, top + (RangeBar.HEIGHT_MM - height) / 2, PageFrame.RIGHT - left, Anchor.LEFT);
        return RangeBar.HEIGHT_MM + 1;
    }

    private double choicesHeight() {
        return GAP + Prose.TEXT.leadMm() + 1.5 + choices.height() + 1 + Prose.NOTE.height(costs, PageFrame.FULL_WIDTH);
    }

    private double choices(Paper paper, double top) {
        PageFrame.hairline(paper, top);
        double y = top + GAP;
        PageFrame.question(paper, "What can be done", y);
        y += Prose.TEXT.leadMm() + 1.5;
        y += choices.paint(paper, PageFrame.LEFT, y, 0, choices.size()) + 1;
        Prose.NOTE.paint(paper, costs, PageFrame.LEFT, y, PageFrame.FULL_WIDTH, Anchor.LEFT);
        return choicesHeight();
    }

    private double nowHeight() {
        double cautions = safety.isEmpty() ? 0 : 2 * GAP + 0.6 + Prose.NOTE.height(safety, PageFrame.ANSWER_WIDTH);
        return GAP + Prose.TEXT.height(now, PageFrame.ANSWER_WIDTH) + cautions;
    }
}
