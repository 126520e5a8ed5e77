package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.survey.settings.Settings.Terms;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The judge of pages sees what it is to see, so that its silence means something. */
@NullUnmarked // JUnit fills the folder
class OverlapsTest {
    @TempDir
    Path folder;

    private Path page(PdfFile.Painting painting) throws IOException {
        Path file = folder.resolve("page.pdf");
        try (PdfFile pdf = new PdfFile("Page", LocalDate.of(2026, 5, 19), Terms.Sign.POINT)) {
            pdf.page(PageSize.A4, painting);
            pdf.save(file);
        }
        return file;
    }

    private static void words(Paper paper, String words, double x, double y) {
        paper.text(words, x, y, Type.LABEL, Anchor.LEFT);
    }

    @Test
    void wordsOnWordsAndOnMarksAreSeen() throws IOException {
        assertThat(Overlaps.of(page(p -> {
                    words(p, "davit foot", 40, 40);
                    words(p, "R5", 45, 40.5);
                    p.ring(100, 100, 2.6, Pen.MARK);
                    words(p, "V1", 100.5, 101);
                    p.disc(100, 150, 7.8);
                    p.text("3", 100, 151, Type.LABEL, Anchor.CENTRE, Tone.WHITE);
                })))
                .anyMatch(f -> f.contains("\"R5\" on \"davit foot\""))
                .anyMatch(f -> f.contains("\"V1\" on a mark of 2.6 mm"))
                .noneMatch(f -> f.contains("7.8 mm"));
        assertThat(Overlaps.of(page(p -> {
                    words(p, "davit foot", 40, 40);
                    words(p, "R5", 40, 44);
                })))
                .isEmpty();
    }

    @Test
    void faintWordsAreSeen() throws Exception {
        Path grey = page(p -> {
            p.part(Part.TITLE, t -> words(t, "Title", 40, 30));
            p.text("grey", 40, 40, Type.LABEL, Anchor.LEFT, new Color(0x808080));
        });
        assertThatThrownBy(() -> Kept.check(grey)).hasMessageContaining("contrast under 7 : 1");
        Path onGrey = page(p -> {
            p.part(Part.TITLE, t -> words(t, "Title", 40, 30));
            p.fill(Paper.square(45, 40, 20), new Color(0x606060));
            words(p, "black", 40, 40);
        });
        assertThatThrownBy(() -> Kept.check(onGrey)).hasMessageContaining("contrast under 7 : 1");
    }

    @Test
    void aPageWithoutANameIsSeen() throws Exception {
        Path nameless = page(p -> words(p, "words", 40, 30));
        assertThatThrownBy(() -> Kept.check(nameless)).isInstanceOf(AssertionError.class);
        Kept.check(page(p -> p.part(Part.TITLE, t -> words(t, "Title", 40, 30))));
    }
}
