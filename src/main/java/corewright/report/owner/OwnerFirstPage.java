package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.report.page.FirmHead;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.Prose;
import corewright.report.page.Titles;

/** The answer and the map: what is wrong, what to do now, what it costs, who decides. */
final class OwnerFirstPage {
    private static final double GAP = 2.6;

    /** Titles by length: large while they take no more than this many lines. */
    private static final int TITLE_LINES = 3;

    private static final Prose LONG_TITLE = new Prose(17, 6.8);

    private final Assessment assessment;
    private final FirmHead firm;
    private final FaceDamage face;
    private final double end;
    private final String title;
    private final Prose titled;
    private final String wrong;
    private final String now;
    private final String costs;
    private final String decides;

    OwnerFirstPage(Assessment assessment, FirmHead firm) {
        this.assessment = assessment;
        this.firm = firm;
        face = OwnerTitle.worst(assessment);
        end = PageSize.of(assessment.survey()).bodyEnd();
        Measure measure = Measure.of(assessment.survey());
        title = Prose.bold(measure.say(OwnerTitle.of(assessment)));
        boolean large = Prose.TITLE.height(title, PageFrame.FULL_WIDTH) <= TITLE_LINES * Prose.TITLE.leadMm();
        titled = large ? Prose.TITLE : LONG_TITLE;
        wrong = measure.say(OwnerWords.wrong(assessment, 1) + shown(assessment, face));
        now = measure.say(OwnerWords.now(assessment));
        costs = OwnerCosts.inShort(assessment);
        decides = OwnerWords.decides(assessment);
    }

    /** Which face the map is of, where there are several. */
    private static String shown(Assessment assessment, FaceDamage face) {
        int faces = assessment.damage().faces().size();
        return faces == 1
                ? ""
                : " The plan shows " + Prose.plain(PlaceWords.named(face.face().name()))
                        + (assessment.damage().regions().isEmpty() ? "" : ", which has most of it") + ".";
    }

    void paint(Paper paper) {
        String faces = assessment.damage().faces().size() == 1
                ? " · " + Prose.plain(face.face().name())
                : "";
        var heading = assessment.survey().heading();
        PageFrame.head(paper, Titles.boat(heading) + faces + " · report to the owner", Titles.data(heading));
        firm.paint(paper, PageFrame.BODY + 1);
        double top = PageFrame.BODY + 1 + firm.heightMm();
        paper.part(Part.HEADING, p -> titled.paint(p, title, PageFrame.LEFT, top, PageFrame.FULL_WIDTH, Anchor.LEFT));
        double y = top + titled.height(title, PageFrame.FULL_WIDTH) + 2;
        y += question(paper, "What is wrong", wrong, y) + GAP;
        Box room = new Box(PageFrame.LEFT, y, PageFrame.FULL_WIDTH, end - answers() - y);
        y += OwnerPlan.paint(paper, assessment, face, room) + GAP;
        y += ruled(paper, "What to do now", now, y);
        y += ruled(paper, "What it costs", costs, y);
        ruled(paper, "Who decides", decides, y);
    }

    private static double question(Paper paper, String question, String answer, double top) {
        PageFrame.question(paper, question, top);
        return Prose.TEXT.paint(paper, answer, PageFrame.ANSWERS, top, PageFrame.ANSWER_WIDTH, Anchor.LEFT);
    }

    private static double ruled(Paper paper, String question, String answer, double top) {
        if (answer.isEmpty()) {
            return 0;
        }
        PageFrame.hairline(paper, top);
        return question(paper, question, answer, top + GAP) + 2 * GAP;
    }

    /** Height of what stands under the map. */
    private double answers() {
        double height = GAP;
        for (String answer : new String[] {now, costs, decides}) {
            height += answer.isEmpty() ? 0 : Prose.TEXT.height(answer, PageFrame.ANSWER_WIDTH) + 2 * GAP;
        }
        return height;
    }
}
