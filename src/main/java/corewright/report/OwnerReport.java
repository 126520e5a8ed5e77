package corewright.report;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Figures;
import corewright.survey.Heading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** owner-report.pdf: the answer on page 1, then every face with its regions. */
final class OwnerReport {
    private OwnerReport() {}

    static void write(Assessment assessment, Path file) throws IOException {
        Heading heading = assessment.survey().heading();
        String foot = OwnerWords.seen(assessment.survey().readings());
        List<PdfFile.Painting> pages = new ArrayList<>();
        pages.add(new OwnerFirstPage(assessment)::paint);
        for (FaceDamage face : assessment.damage().faces()) {
            pages.addAll(OwnerFacePage.of(assessment, face));
            pages.addAll(OwnerStiffnessPage.of(assessment, face.face().name()));
        }
        try (PdfFile pdf = new PdfFile(boat(heading) + ", report to the owner", heading.surveyed())) {
            for (int i = 0; i < pages.size(); i++) {
                PdfFile.Painting page = pages.get(i);
                int number = i + 1;
                pdf.page(Sheet.WIDTH, Sheet.HEIGHT, paper -> {
                    page.on(paper);
                    Sheet.foot(paper, foot, number, pages.size());
                });
            }
            pdf.save(file);
        }
    }

    /** The vessel, or the survey's name where the vessel has none. */
    static String boat(Heading heading) {
        return Prose.plain(heading.vessel().isBlank() ? heading.name() : heading.vessel());
    }

    /** Who, which survey and when, for the right end of a page's head; what may be left out first comes first. */
    static List<String> data(Heading heading) {
        String survey = heading.vessel().isBlank() ? "" : heading.name();
        return Stream.of(survey, heading.surveyor(), Figures.date(heading.surveyed()))
                .map(Prose::plain)
                .filter(s -> !s.isEmpty())
                .toList();
    }
}
