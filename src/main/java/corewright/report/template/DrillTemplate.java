package corewright.report.template;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.template.Job;
import corewright.drawing.template.Leaf;
import corewright.drawing.template.Tiling;
import corewright.drawing.template.Tiling.Tile;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.Heading;
import corewright.survey.settings.Settings.Terms;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The full-size template: what is to be drilled and cut, 1 : 1. */
public final class DrillTemplate {
    private static final Type TITLE = new Type(Typeface.TEXT_BOLD, 20);
    private static final double ROUND_JOB = 20;

    private DrillTemplate() {}

    /** {@code drill-template.pdf}: sheets of the reader's paper, to be joined. */
    public static void tiles(Assessment assessment, Path file) throws IOException {
        Leaf leaf = Leaf.of(assessment.survey().settings().terms().paper());
        write(assessment, file, "drill template", job -> leaf);
    }

    /** {@code drill-template-sheet.pdf}: each place on one sheet as large as it is, for a printer that takes a roll. */
    public static void sheets(Assessment assessment, Path file) throws IOException {
        write(assessment, file, "drill template, one sheet each", job -> {
            Box extent = Tiling.extent(job).grown(ROUND_JOB);
            return Leaf.around(extent.width(), extent.height());
        });
    }

    private record Page(Job job, Leaf leaf, Tiling tiling, Tile tile) {}

    private static void write(Assessment assessment, Path file, String what, Function<Job, Leaf> paper)
            throws IOException {
        Heading heading = assessment.survey().heading();
        Terms terms = assessment.survey().settings().terms();
        List<Page> pages = new ArrayList<>();
        for (Job job : Jobs.of(assessment)) {
            Leaf leaf = paper.apply(job);
            Tiling tiling = Tiling.of(job, leaf);
            tiling.tiles().forEach(t -> pages.add(new Page(job, leaf, tiling, t)));
        }
        try (PdfFile pdf = new PdfFile(Titles.boat(heading) + ", " + what, heading.surveyed(), terms.decimal())) {
            for (int i = 0; i < pages.size(); i++) {
                Page page = pages.get(i);
                String sheet = "sheet " + (i + 1) + " of " + pages.size();
                pdf.page(page.leaf.widthMm(), page.leaf.heightMm(), p -> new TilePage(
                                page.job, page.leaf, page.tiling, page.tile)
                        .paint(p, sheet));
            }
            if (pages.isEmpty()) {
                Leaf leaf = Leaf.of(terms.paper());
                pdf.page(leaf.widthMm(), leaf.heightMm(), p -> nothing(p, leaf, assessment));
            }
            pdf.save(file);
        }
    }

    private static void nothing(Paper paper, Leaf leaf, Assessment assessment) {
        Heading heading = assessment.survey().heading();
        paper.part(Part.TITLE, p -> p.text("Nothing to drill or cut", Leaf.LEFT, 24, TITLE, Anchor.LEFT));
        String words = assessment.verdict().withheld()
                ? assessment.verdict().sentence() + " Drill nothing before that is settled."
                : "No region of this survey is to be injected, cut out or opened to dry, so there is no template.";
        Prose.TEXT.paint(
                paper,
                Prose.bold(Titles.boat(heading) + ".") + " " + Prose.plain(words),
                Leaf.LEFT,
                30,
                leaf.widthMm() - Leaf.LEFT - Leaf.RIGHT,
                Anchor.LEFT);
    }
}
