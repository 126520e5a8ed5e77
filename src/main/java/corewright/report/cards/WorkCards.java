package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.assessment.Issued;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.work.WorkProgress;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.Heading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * work-cards.pdf, cards of two sides: for each region to be injected drilling at the front and mixing at the back, for each to
 * be cut out opening and closing, for each to be dried the holes and a log, for what must be proven first a card of its own.
 */
public final class WorkCards {
    private WorkCards() {}

    public static void write(Assessment assessment, Path file) throws IOException {
        Heading heading = assessment.survey().heading();
        LyingSheet sheet = LyingSheet.of(assessment.survey());
        try (PdfFile pdf = new PdfFile(
                Titles.boat(heading) + ", work cards",
                heading.surveyed(),
                assessment.survey().settings().terms().decimal())) {
            for (PdfFile.Painting page : pages(assessment)) {
                pdf.page(sheet, CardSheet.RIGHT, page);
            }
            pdf.save(file);
        }
    }

    /** Front and back in turn; a single page where no work is planned. */
    static List<PdfFile.Painting> pages(Assessment assessment) {
        List<InjectionPlan> plans = assessment.decision().injections();
        String revision = revision(assessment);
        List<PdfFile.Painting> pages = new ArrayList<>();
        List<TwoSided> single = single(assessment);
        int all = single.size()
                + plans.stream()
                        .mapToInt(p -> cards(new InjectionCard(assessment, p)))
                        .sum();
        int number = 1;
        for (InjectionPlan plan : plans) {
            InjectionCard card = new InjectionCard(assessment, plan);
            List<List<Batch>> cups = CardBack.cups(card);
            List<HoleTable> tables = HoleTable.of(card, cups.size());
            for (int i = 0; i < cards(card); i++) {
                pages.add(front(card, tables, i, side(revision, number, all, "front")));
                pages.add(back(card, cups, i, side(revision, number, all, "back")));
                number++;
            }
        }
        for (TwoSided card : single) {
            List<String> front = side(revision, number, all, "front");
            List<String> back = side(revision, number, all, "back");
            pages.add(paper -> card.front(paper, front));
            pages.add(paper -> card.back(paper, back));
            number++;
        }
        for (WorkProgress begun : NextCard.wanted(assessment)) {
            NextCard card = new NextCard(assessment, begun);
            List<String> next = List.of("after the log", revision);
            pages.add(paper -> card.paint(paper, next));
        }
        pages.addAll(LeftCard.pages(assessment, revision));
        pages.addAll(WorkRecord.pages(assessment));
        if (pages.isEmpty()) {
            pages.add(paper -> nothing(paper, assessment));
        }
        return pages;
    }

    /** Cards of one sheet each: what is cut out, what is dried, what is proven first. */
    private static List<TwoSided> single(Assessment assessment) {
        List<TwoSided> cards = new ArrayList<>();
        assessment.decision().recores().forEach(p -> cards.add(new CutOutCard(assessment, p)));
        DryCard.wanted(assessment).forEach(r -> cards.add(new DryCard(assessment, r)));
        ProofCard.wanted(assessment).forEach(r -> cards.add(new ProofCard(assessment, r)));
        return cards;
    }

    private static int cards(InjectionCard card) {
        int backs = CardBack.cups(card).size();
        return Math.max(HoleTable.of(card, backs).size(), backs);
    }

    private static List<String> side(String revision, int number, int of, String side) {
        return List.of("card " + number + " of " + of + ", " + side, revision);
    }

    /** By which a card is known to be of date. */
    private static String revision(Assessment assessment) {
        int revision = Issued.of(assessment.survey(), assessment.damage(), assessment.decision())
                .plan()
                .revision();
        return "revision " + revision + ", survey of "
                + Figures.date(assessment.survey().heading().surveyed());
    }

    private static PdfFile.Painting front(InjectionCard card, List<HoleTable> tables, int i, List<String> side) {
        return i < tables.size()
                ? paper -> new CardFront(card).paint(paper, tables.get(i), side)
                : paper -> CardNotes.paint(paper, card.plan().region(), side);
    }

    private static PdfFile.Painting back(InjectionCard card, List<List<Batch>> cups, int i, List<String> side) {
        return i < cups.size()
                ? paper -> new CardBack(card, cups.get(i)).paint(paper, side)
                : paper -> CardNotes.paint(paper, card.plan().region(), side);
    }

    private static void nothing(Paper paper, Assessment assessment) {
        Heading heading = assessment.survey().heading();
        CardSheet.head(paper, "No cards", Prose.bold(Titles.boat(heading) + "."), List.of(""));
        CardSheet.TEXT.paint(
                paper,
                Prose.plain(
                        assessment.verdict().withheld()
                                ? assessment.verdict().sentence() + " Drill nothing before that is settled."
                                : "No region of this survey is to be injected, cut out or dried."),
                CardSheet.LEFT,
                CardSheet.BODY,
                CardSheet.FULL_WIDTH,
                Anchor.LEFT);
    }
}
