package corewright.report.compare;

import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.report.page.Titles;
import corewright.survey.Heading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** comparison.pdf: the answer on page 1, then every face that could be compared. */
public final class ComparisonReport {
    private static final String FOOT =
            "Estimated from readings of the outside. Where strength matters, a naval architect or surveyor decides.";

    private ComparisonReport() {}

    public static void write(Comparison comparison, Path file) throws IOException {
        Heading heading = comparison.after().survey().heading();
        PageSize size = PageSize.of(comparison.after().survey());
        List<PdfFile.Painting> pages = new ArrayList<>(new FirstPage(comparison).pages());
        comparison.faces().stream()
                .filter(FaceComparison::compared)
                .forEach(f -> pages.add(new FacePage(comparison, f)::paint));
        try (PdfFile pdf = new PdfFile(
                Titles.boat(heading) + ", re-survey",
                heading.surveyed(),
                comparison.after().survey().settings().terms().decimal())) {
            for (int i = 0; i < pages.size(); i++) {
                PdfFile.Painting page = pages.get(i);
                int number = i + 1;
                pdf.page(size, paper -> {
                    page.on(paper);
                    PageFrame.foot(paper, size, FOOT, number, pages.size());
                });
            }
            pdf.save(file);
        }
    }
}
