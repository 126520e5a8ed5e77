package corewright.report.page;

import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Typeface;
import corewright.survey.settings.Settings.Terms;
import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DImageEncoder.IPdfBoxGraphics2DImageEncoderEnv;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Image;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF in the making, one {@link Paper} a page, millimetres, y down. Text stays text, fonts are embedded as subsets, and
 * the same content gives the same bytes.
 */
public final class PdfFile implements AutoCloseable {
    /** What is drawn on a page. */
    @FunctionalInterface
    public interface Painting {
        void on(Paper paper);
    }

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final float JPEG_QUALITY = 0.85f;
    private static final String SRGB = "sRGB IEC61966-2.1";

    /** Of zlib: a twentieth more bytes than by its own choice of 6, in half the time. */
    private static final int COMPRESSION = 4;

    static {
        System.setProperty(Filter.SYSPROP_DEFLATELEVEL, Integer.toString(COMPRESSION));
    }

    private final PDDocument document = new PDDocument();
    private final Terms.Sign decimal;
    private final Embedded fonts = new Embedded();
    private final PdfParts parts;

    /**
     * @param title of the document, shown by a reader instead of the file's name
     * @param date of the survey: the only date the document carries
     * @param decimal sign of its figures
     */
    public PdfFile(String title, LocalDate date, Terms.Sign decimal) {
        this.decimal = decimal;
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setCreator("Corewright");
        information.setProducer("Corewright");
        information.setCreationDate(calendar(date));
        information.setModificationDate(calendar(date));
        document.setDocumentInformation(information);
        document.setDocumentId(id(title + date));
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences =
                new PDViewerPreferences(document.getDocumentCatalog().getCOSObject());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        archival(title, date);
        parts = new PdfParts(document);
    }

    /**
     * What PDF/A-2b asks for besides embedded fonts (ISO 19005-2, 6.2.3 and 6.6): the colours of the document are those of sRGB, whose
     * profile is in it, and its metadata say what it is.
     */
    private void archival(String title, LocalDate date) {
        try {
            byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
            PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
            intent.setInfo(SRGB);
            intent.setOutputCondition(SRGB);
            intent.setOutputConditionIdentifier(SRGB);
            document.getDocumentCatalog().addOutputIntent(intent);
            PDMetadata metadata = new PDMetadata(document);
            metadata.importXMPMetadata(xmp(title, date).getBytes(StandardCharsets.UTF_8));
            document.getDocumentCatalog().setMetadata(metadata);
        } catch (IOException e) {
            throw new UncheckedIOException("a document in memory cannot be written", e);
        }
    }

    private static String xmp(String title, LocalDate date) {
        String day = date + "T00:00:00+00:00";
        return """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
                 xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
                 xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
                <pdfaid:part>2</pdfaid:part>
                <pdfaid:conformance>B</pdfaid:conformance>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
                <dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>
                <xmp:CreatorTool>Corewright</xmp:CreatorTool>
                <xmp:CreateDate>DAY</xmp:CreateDate>
                <xmp:ModifyDate>DAY</xmp:ModifyDate>
                <pdf:Producer>Corewright</pdf:Producer>
                </rdf:Description>
                </rdf:RDF>
                </x:xmpmeta>
                <?xpacket end="w"?>
                """.replace("DAY", day).replace(
                "TITLE", title.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
    }

    /** Adds an upright page, painted as on A4. */
    public void page(PageSize size, Painting painting) throws IOException {
        page(size.widthMm(), size.heightMm(), size.shift(), painting);
    }

    /** Adds a lying page. */
    public void page(LyingSheet sheet, Painting painting) throws IOException {
        page(sheet, sheet.rightMm(), painting);
    }

    /**
     * Adds a lying page.
     *
     * @param rightMm where what is painted ends
     */
    public void page(LyingSheet sheet, double rightMm, Painting painting) throws IOException {
        page(sheet.widthMm(), sheet.heightMm(), sheet.shiftMm(rightMm), painting);
    }

    /** Adds a page of that size and paints it. */
    public void page(double widthMm, double heightMm, Painting painting) throws IOException {
        page(widthMm, heightMm, 0, painting);
    }

    private void page(double widthMm, double heightMm, double shiftMm, Painting painting) throws IOException {
        float width = (float) (widthMm * POINTS_PER_MM);
        float height = (float) (heightMm * POINTS_PER_MM);
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
        graphics.setFontTextDrawer(fonts);
        graphics.setImageEncoder(PdfFile::jpeg);
        graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
        graphics.translate(shiftMm, 0);
        parts.begin(page);
        painting.on(new Paper(graphics, decimal, parts));
        graphics.dispose();
        contents(page, graphics.getXFormObject());
    }

    /** Photographs are the only pictures: JPEG of 85 in 100. */
    private static PDImageXObject jpeg(
            PDDocument document, PDPageContentStream content, Image image, IPdfBoxGraphics2DImageEncoderEnv env) {
        try {
            return JPEGFactory.createFromImage(document, (BufferedImage) image, JPEG_QUALITY);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture in memory cannot be encoded", e);
        }
    }

    /** What was painted becomes the page itself: marks of the structure are looked for there. */
    private void contents(PDPage page, PDFormXObject painted) throws IOException {
        PDStream stream = new PDStream(document);
        try (InputStream from = painted.getCOSObject().createRawInputStream();
                OutputStream to = stream.getCOSObject().createRawOutputStream()) {
            from.transferTo(to);
        }
        stream.getCOSObject().setItem(COSName.FILTER, painted.getCOSObject().getFilters());
        page.setContents(stream);
        page.setResources(painted.getResources());
    }

    public void save(Path file) throws IOException {
        parts.finish();
        document.save(file.toFile());
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    private static Calendar calendar(LocalDate date) {
        GregorianCalendar calendar = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        calendar.setTimeInMillis(date.atStartOfDay().toInstant(ZoneOffset.UTC).toEpochMilli());
        return calendar;
    }

    private static long id(String text) {
        CRC32 sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }

    /** Our typefaces by the names AWT knows them by; each is loaded once a document, when first used. */
    private final class Embedded extends PdfBoxGraphics2DFontTextDrawer {
        private final Map<String, PDFont> loaded = new HashMap<>();
        /** A font's name is looked up in its file, every time it is asked. */
        private final Map<Font, PDFont> mapped = new HashMap<>();

        @Override
        protected PDFont mapFont(Font font, IFontTextDrawerEnv env) throws IOException {
            PDFont known = mapped.get(font);
            if (known == null) {
                String name = font.getFontName(Locale.ROOT);
                known = loaded.containsKey(name) ? loaded.get(name) : load(name);
                mapped.put(font, known);
            }
            return known;
        }

        @Override
        public void drawText(AttributedCharacterIterator text, IFontTextDrawerEnv env)
                throws IOException, FontFormatException {
            StringBuilder words = new StringBuilder();
            for (char c = text.first(); c != CharacterIterator.DONE; c = text.next()) {
                words.append(c);
            }
            text.first();
            parts.words(env.getContentStream(), words.toString(), () -> draw(text, env));
        }

        private void draw(AttributedCharacterIterator text, IFontTextDrawerEnv env) throws IOException {
            try {
                super.drawText(text, env);
            } catch (FontFormatException e) {
                throw new IOException("a bundled font is damaged", e);
            }
        }

        private PDFont load(String name) throws IOException {
            for (Typeface face : Typeface.values()) {
                if (face.fullName().equals(name)) {
                    try (InputStream file = face.stream()) {
                        byte[] bytes = withoutLigatures(file.readAllBytes());
                        PDFont font = PDType0Font.load(document, new ByteArrayInputStream(bytes), true);
                        loaded.put(name, font);
                        return font;
                    }
                }
            }
            throw new IOException("no embedded typeface for " + name);
        }

        /**
         * The font with its table of substitutions hidden. A ligature for "ff" would be wider or narrower than what was
         * measured, and a reader could not copy it as two letters. OpenType 1.9, table directory: 12 bytes, then
         * records of 16 that begin with the tag.
         */
        private static byte[] withoutLigatures(byte[] font) {
            int tables = ((font[4] & 0xff) << 8) | (font[5] & 0xff);
            for (int at = 12; at < 12 + 16 * tables; at += 16) {
                if ("GSUB".equals(new String(font, at, 4, StandardCharsets.US_ASCII))) {
                    font[at] = 'x';
                }
            }
            return font;
        }
    }
}
