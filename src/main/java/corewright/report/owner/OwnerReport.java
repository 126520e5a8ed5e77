package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.report.page.FirmHead;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.report.page.Titles;
import corewright.store.Pictures;
import corewright.survey.Heading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** owner-report.pdf: the answer and the map on page 1, the choices on page 2, then every face with its regions. */
public final class OwnerReport {
    private OwnerReport() {}

    public static void write(Assessment assessment, Path file) throws IOException {
        write(assessment, Pictures.NONE, file);
    }

    /** @param pictures the firm's logo */
    public static void write(Assessment assessment, Pictures pictures, Path file) throws IOException {
        Heading heading = assessment.survey().heading();
        PageSize size = PageSize.of(assessment.survey());
        String foot = OwnerWords.seen(assessment.survey().readings());
        List<PdfFile.Painting> pages = new ArrayList<>();
        pages.add(new OwnerFirstPage(assessment, new FirmHead(assessment.survey(), pictures))::paint);
        pages.addAll(OwnerChoicesPage.of(assessment));
        for (FaceDamage face : assessment.damage().faces()) {
            pages.addAll(OwnerFacePage.of(assessment, face));
            pages.addAll(OwnerStiffnessPage.of(assessment, face.face().name()));
        }
        try (PdfFile pdf = new PdfFile(
                Titles.boat(heading) + ", report to the owner",
                heading.surveyed(),
                assessment.survey().settings().terms().decimal())) {
            for (int i = 0; i < pages.size(); i++) {
                PdfFile.Painting page = pages.get(i);
                int number = i + 1;
                pdf.page(size, paper -> {
                    page.on(paper);
                    PageFrame.foot(paper, size, foot, number, pages.size());
                });
            }
            pdf.save(file);
        }
    }
}
