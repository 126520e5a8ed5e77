package corewright.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfPageTest {
    /** Two A4 pages; the second has a black square of 100 points, its lower left corner 200 right and 300 up. */
    private static Path drawing(Path folder) throws IOException {
        Path file = folder.resolve("deck.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage(PDRectangle.A4));
            PDPage second = new PDPage(PDRectangle.A4);
            document.addPage(second);
            try (PDPageContentStream content = new PDPageContentStream(document, second)) {
                content.addRect(200, 300, 100, 100);
                content.fill();
            }
            document.save(file.toFile());
        }
        return file;
    }

    @Test
    void aPageIsDrawnToTheSizeAskedForWithEverythingInItsPlace(@TempDir Path folder) throws IOException {
        Path file = drawing(folder);
        BufferedImage picture = PdfPage.picture(file, 2, 842);

        assertThat(PdfPage.count(file)).isEqualTo(2);
        // A4 is 595.3 x 841.9 points (ISO 216: 210 x 297 mm), so a point is a pixel here
        assertThat(picture.getHeight()).isBetween(841, 843);
        assertThat(picture.getWidth()).isBetween(595, 596);
        assertThat(picture.getRGB(250, 842 - 350) & 0xFFFFFF).isZero();
        assertThat(picture.getRGB(190, 842 - 350) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(picture.getRGB(250, 842 - 410) & 0xFFFFFF).isEqualTo(0xFFFFFF);
    }

    @Test
    void whatIsNoPdfOrHasNoSuchPageIsRefusedByName(@TempDir Path folder) throws IOException {
        Path file = drawing(folder);
        Path other = Files.writeString(folder.resolve("plan.pdf"), "no PDF");

        assertThatThrownBy(() -> PdfPage.picture(file, 3, 842)).hasMessage("deck.pdf has 2 pages, no page 3");
        assertThatThrownBy(() -> PdfPage.count(other)).hasMessageStartingWith("plan.pdf is not a PDF that can be read");
    }
}
