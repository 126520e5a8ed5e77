package corewright.drawing.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TypefaceTest {
    /** Asap's design: figures 535/1000 em, condensed 470/1000, alike in all weights. Tolerance half a unit. */
    @ParameterizedTest
    @EnumSource(Typeface.class)
    void figuresAreTabularAndAlikeInEveryWeight(Typeface face) {
        double em = face.fullName().contains("Condensed") ? 0.470 : 0.535;
        Type type = new Type(face, 72 / 25.4); // an em of one millimetre
        for (char c = '0'; c <= '9'; c++) {
            assertThat(type.width(String.valueOf(c))).as("%s", c).isEqualTo(em, within(0.0005));
        }
    }

    @Test
    void theSixAreToldApartByFullName() {
        assertThat(Arrays.stream(Typeface.values()).map(Typeface::fullName))
                .doesNotHaveDuplicates()
                .contains("Asap Regular", "Asap SemiBold", "Asap Condensed Bold");
    }

    @Test
    void svgNamesFamilyAndWeight() throws IOException {
        var document = GenericDOMImplementation.getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null);
        SVGGraphics2D g = new SVGGraphics2D(document);
        everyFace(new Paper(g));
        StringWriter svg = new StringWriter();
        g.stream(svg, true);

        assertThat(svg.toString())
                .contains("font-family:'Asap'", "font-family:'Asap Condensed'", "font-weight:600", "font-weight:bold")
                .contains(">TEXT_SEMIBOLD 0.17 m² 18 °C<");
    }

    @Test
    void pdfTextStaysTextInAllSix() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(300, 300));
            document.addPage(page);
            PdfBoxGraphics2DFontTextDrawer fonts = new PdfBoxGraphics2DFontTextDrawer();
            for (Typeface face : Typeface.values()) {
                fonts.registerFont(face.fullName(), face.stream());
            }
            PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, 300, 300);
            g.setFontTextDrawer(fonts);
            everyFace(new Paper(g));
            g.dispose();
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(g.getXFormObject());
            }
            // the table from glyphs to letters is written when the fonts are subset, on saving
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            assertEveryFaceIsText(bytes.toByteArray());
        }
    }

    private static void assertEveryFaceIsText(byte[] pdf) throws IOException {
        Set<String> used = new TreeSet<>();
        PDFTextStripper text = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition position) {
                used.add(position.getFont().getName().replaceAll("^[A-Z]{6}\\+", ""));
                super.processTextPosition(position);
            }
        };
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String words = text.getText(document);
            for (Typeface face : Typeface.values()) {
                assertThat(words).contains(face + " 0.17 m² 18 °C");
            }
        }
        assertThat(used)
                .isEqualTo(Arrays.stream(Typeface.values())
                        .map(f -> f.fullName()
                                .replace("Asap Condensed ", "AsapCondensed-")
                                .replace("Asap ", "Asap-"))
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    private static void everyFace(Paper paper) {
        double y = 20;
        for (Typeface face : Typeface.values()) {
            paper.text(face + " 0.17 m² 18 °C", 10, y, new Type(face, 30), Paper.Anchor.LEFT);
            y += 20;
        }
    }
}
