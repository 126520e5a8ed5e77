package corewright.report.sheets;

import corewright.drawing.kit.LyingSheet;
import corewright.report.page.PdfFile;
import corewright.report.page.Titles;
import corewright.survey.Face;
import corewright.survey.Survey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The field sheets of a survey: every face on as many sheets as its places take. */
public final class FieldSheets {
    private FieldSheets() {}

    /**
     * Writes the PDF.
     *
     * @param spacingMm of the grid where nothing was read yet
     * @return how many sheets
     */
    public static int write(Survey survey, double spacingMm, LyingSheet size, Path file) throws IOException {
        List<FieldSheet> sheets = new ArrayList<>();
        for (Face face : survey.faces()) {
            SheetPlaces places = SheetPlaces.of(survey, face, spacingMm);
            int rows = FieldSheet.capacity(size, places.again());
            int count = Math.max(1, (places.places().size() + rows - 1) / rows);
            for (int k = 0; k < count; k++) {
                int from = k * rows;
                int to = Math.min(places.places().size(), from + rows);
                sheets.add(new FieldSheet(survey, places, from, to, size));
            }
        }
        try (PdfFile pdf = new PdfFile(
                Titles.boat(survey.heading()) + ", field sheets",
                survey.heading().surveyed(),
                survey.settings().terms().decimal())) {
            for (int i = 0; i < sheets.size(); i++) {
                FieldSheet sheet = sheets.get(i);
                int number = i + 1;
                pdf.page(size.widthMm(), size.heightMm(), paper -> sheet.paint(paper, number, sheets.size()));
            }
            pdf.save(file);
        }
        return sheets.size();
    }
}
