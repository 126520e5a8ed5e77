package corewright.report.compare;

import corewright.comparison.Change;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.comparison.Quantity;
import corewright.comparison.RegionChange.Fate;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.Titles;
import corewright.report.page.Wording;
import corewright.survey.Heading;
import java.util.ArrayList;
import java.util.List;

/** The answer on one page: is it better, by how much, how sure; what was promised and what is reached. */
final class FirstPage {
    private static final List<Quantity> TOLD =
            List.of(Quantity.DAMAGED, Quantity.WATER, Quantity.LOOSE, Quantity.VOID_VOLUME);

    private final Comparison comparison;
    private final Measure measure;
    private final String title;
    private final String found;
    private final String open;
    private final RuledTable totals;
    private final RuledTable places;

    FirstPage(Comparison comparison) {
        this.comparison = comparison;
        measure = Measure.of(comparison.after().survey());
        ChangeTables tables = new ChangeTables(measure);
        title = Prose.bold(measure.say(ComparisonWords.answer(comparison)));
        found = measure.say(found());
        open = measure.say(open());
        List<Change> told = comparison.totals().stream()
                .filter(c -> TOLD.contains(c.quantity()))
                .toList();
        totals = tables.totals(told);
        places = tables.places(comparison);
    }

    /** This page and those on which its table of places goes on. */
    List<PdfFile.Painting> pages() {
        Flow flow = new Flow(PageSize.of(comparison.after().survey()));
        flow.block(
                Prose.TITLE.height(title, PageFrame.FULL_WIDTH) + 2,
                (paper, top) ->
                        Prose.TITLE.paint(paper, title, PageFrame.LEFT, top, PageFrame.FULL_WIDTH, Anchor.LEFT));
        flow.answer("What changed", found, Prose.TEXT);
        if (totals.size() > 0) {
            flow.table("How sure we are", totals);
        }
        if (places.size() > 0) {
            flow.table("Promised and reached", places);
        }
        flow.answer("What to know", open, Prose.NOTE);
        List<PdfFile.Painting> pages = new ArrayList<>();
        for (int i = 0; i < flow.pages(); i++) {
            int page = i;
            pages.add(paper -> {
                head(paper, page == 0 ? " · re-survey" : " · places, continued");
                flow.paint(paper, page);
            });
        }
        return pages;
    }

    private String found() {
        Heading was = comparison.before().survey().heading();
        Heading is = comparison.after().survey().heading();
        StringBuilder words = new StringBuilder(
                "Surveyed " + Figures.date(was.surveyed()) + " and again " + Figures.date(is.surveyed()) + ".");
        ComparisonWords.total(comparison, Quantity.DAMAGED)
                .ifPresent(c -> words.append(' ').append(ComparisonWords.sentence(c)));
        told(words, Fate.MENDED, "Mended: ");
        told(words, Fate.PARTLY, "Partly mended: ");
        told(words, Fate.NEW, "New: ");
        told(words, Fate.NOT_READ, "Not read in both: ");
        return words.toString();
    }

    private void told(StringBuilder words, Fate fate, String begin) {
        List<String> ids = ComparisonWords.places(comparison, fate);
        if (!ids.isEmpty()) {
            words.append(' ').append(begin).append(Wording.list(ids)).append('.');
        }
    }

    /** What cannot be compared, and what a reader must know. */
    private String open() {
        StringBuilder words = new StringBuilder();
        for (FaceComparison face : comparison.faces()) {
            String name = Prose.bold(Wording.sentence(Prose.plain(face.name()))) + ". ";
            if (!face.compared()) {
                words.append(name).append(Prose.plain(face.whyNot())).append('\n');
            } else if (!face.notes().isEmpty()) {
                words.append(name)
                        .append(Prose.plain(String.join(" ", face.notes())))
                        .append('\n');
            }
        }
        words.append(
                "A difference is called proven where it keeps its sign in 199 of 200 pairs of equally likely decks, one drawn from"
                        + " each survey’s readings. What is not proven may be so or not: the readings do not tell.");
        return words.toString();
    }

    private void head(Paper paper, String what) {
        Heading heading = comparison.after().survey().heading();
        PageFrame.head(paper, Titles.boat(heading) + what, Titles.data(heading));
    }
}
