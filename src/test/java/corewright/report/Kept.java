package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** What every document must be to be kept as evidence, and read: judged from the file alone. */
public final class Kept {
    private Kept() {}

    /** PDF/A-2b, structured, its words 7 : 1 against their ground and not on others. */
    public static void check(Path file) throws Exception {
        archival(file);
        legible(file);
    }

    /** An independent validator finds it to be PDF/A-2b (ISO 19005-2). */
    static void archival(Path file) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        PDFAFlavour flavour = PDFAFlavour.PDFA_2_B;
        try (InputStream in = Files.newInputStream(file);
                PDFAParser parser = Foundries.defaultInstance().createParser(in, flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.isCompliant())
                    .as(file.getFileName() + ": "
                            + result.getTestAssertions().stream().limit(3).toList())
                    .isTrue();
        }
    }

    /**
     * All words belong to a part or are marked as repeated, each page has its name, drawings have a text, bookmarks lead somewhere;
     * words are 7 : 1 against their ground and not on others.
     */
    static void legible(Path file) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            PDDocumentCatalog catalog = pdf.getDocumentCatalog();
            String as = file.getFileName().toString();
            assertThat(catalog.getLanguage()).as(as).isEqualTo("en");
            assertThat(pdf.getDocumentInformation().getTitle()).as(as).isNotBlank();
            assertThat(catalog.getMarkInfo().isMarked()).as(as).isTrue();
            assertThat(catalog.getStructureTreeRoot().getParentTree()).as(as).isNotNull();
            List<PDStructureElement> parts = new ArrayList<>();
            collect(catalog.getStructureTreeRoot(), parts);
            assertThat(parts)
                    .extracting(PDStructureElement::getStructureType)
                    .as(as)
                    .contains("Document", "H1")
                    .isSubsetOf("Document", "H1", "H2", "P", "Table", "TR", "TH", "TD", "Figure");
            assertThat(parts.stream().filter(p -> p.getStructureType().equals("Figure")))
                    .as(as + " drawings")
                    .allSatisfy(f -> assertThat(f.getAlternateDescription()).isNotBlank());
            Set<Integer> named = new TreeSet<>();
            for (PDStructureElement part : parts) {
                if (part.getStructureType().equals("H1")) {
                    named.add(pdf.getPages().indexOf(part.getPage()));
                }
            }
            assertThat(named).as(as + " pages with a name").hasSize(pdf.getNumberOfPages());
            int marks = 0;
            for (PDOutlineItem item : catalog.getDocumentOutline().children()) {
                assertThat(item.getTitle()).as(as).isNotBlank();
                PDPage to = item.findDestinationPage(pdf);
                assertThat(to).as(as + " bookmark " + item.getTitle()).isNotNull();
                marks++;
            }
            assertThat(marks).as(as + " bookmarks").isGreaterThanOrEqualTo(pdf.getNumberOfPages());
            for (PDPage page : pdf.getPages()) {
                Overlaps read = Overlaps.read(page);
                assertThat(read.unmarked()).as(as + " words of no part").isEmpty();
                assertThat(read.faint()).as(as + " contrast under 7 : 1").isEmpty();
                assertThat(read.found()).as(as + " words on words or marks").isEmpty();
            }
        }
    }

    private static void collect(PDStructureNode node, List<PDStructureElement> into) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                into.add(element);
                collect(element, into);
            }
        }
    }
}
