package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.repair.plan.Batch;
import corewright.repair.plan.InjectionPlan;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.Heading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** work-cards.pdf: for each region to be injected cards of two sides, drill at the front, mix at the back. */
public final class WorkCards {
    private WorkCards() {}

    public static void write(Assessment assessment, Path file) throws IOException {
        Heading heading = assessment.survey().heading();
        try (PdfFile pdf = new PdfFile(
                Titles.boat(heading) + ", work cards",
                heading.surveyed(),
                assessment.survey().settings().terms().decimal())) {
            for (PdfFile.Painting page : pages(assessment)) {
                pdf.page(CardSheet.WIDTH, CardSheet.HEIGHT, page);
            }
            pdf.save(file);
        }
    }

    /** Front and back in turn; a single page where nothing is to be injected. */
    static List<PdfFile.Painting> pages(Assessment assessment) {
        List<InjectionPlan> plans = assessment.decision().injections();
        List<PdfFile.Painting> pages = new ArrayList<>();
        int all = plans.stream()
                .mapToInt(p -> cards(new InjectionCard(assessment, p)))
                .sum();
        int number = 1;
        for (InjectionPlan plan : plans) {
            InjectionCard card = new InjectionCard(assessment, plan);
            List<List<Batch>> cups = CardBack.cups(card);
            List<HoleTable> tables = HoleTable.of(card, cups.size());
            for (int i = 0; i < cards(card); i++) {
                pages.add(front(card, tables, i, side(assessment, number, all, "front")));
                pages.add(back(card, cups, i, side(assessment, number, all, "back")));
                number++;
            }
        }
        if (pages.isEmpty()) {
            pages.add(paper -> nothing(paper, assessment));
        }
        return pages;
    }

    private static int cards(InjectionCard card) {
        int backs = CardBack.cups(card).size();
        return Math.max(HoleTable.of(card, backs).size(), backs);
    }

    private static List<String> side(Assessment assessment, int number, int of, String side) {
        return List.of(
                "card " + number + " of " + of + ", " + side,
                "survey of " + Figures.date(assessment.survey().heading().surveyed()));
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
                                : "No region of this survey is to be injected."),
                CardSheet.LEFT,
                CardSheet.BODY,
                CardSheet.FULL_WIDTH,
                Anchor.LEFT);
    }
}
