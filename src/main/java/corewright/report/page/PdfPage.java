package corewright.report.page;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page of somebody's drawing as a picture, to be traced. */
public final class PdfPage {
    private static final long LARGEST_BYTES = 64L << 20;
    private static final double POINTS_PER_INCH = 72;

    private PdfPage() {}

    /** How many pages a file has. */
    public static int count(Path file) throws IOException {
        try (PDDocument document = open(file)) {
            return document.getNumberOfPages();
        }
    }

    /**
     * A page as a picture whose longer side has so many pixels, whatever the size of its paper.
     *
     * @param page the first is 1
     */
    public static BufferedImage picture(Path file, int page, int longerSide) throws IOException {
        try (PDDocument document = open(file)) {
            if (page < 1 || page > document.getNumberOfPages()) {
                throw new IOException(
                        file.getFileName() + " has " + document.getNumberOfPages() + " pages, no page " + page);
            }
            PDRectangle box = document.getPage(page - 1).getCropBox();
            double longer = Math.max(box.getWidth(), box.getHeight());
            double shorter = Math.min(box.getWidth(), box.getHeight());
            if (!(shorter > 0) || longer > 100 * shorter) {
                throw new IOException(file.getFileName() + ": page " + page + " has no size that can be shown");
            }
            double dpi = longerSide * POINTS_PER_INCH / longer;
            return new PDFRenderer(document).renderImageWithDPI(page - 1, (float) dpi, ImageType.RGB);
        }
    }

    private static PDDocument open(Path file) throws IOException {
        if (Files.size(file) > LARGEST_BYTES) {
            throw new IOException(file.getFileName() + " is larger than " + (LARGEST_BYTES >> 20) + " MB");
        }
        try {
            File folder = new File(System.getProperty("java.io.tmpdir"));
            return Loader.loadPDF(
                    file.toFile(), MemoryUsageSetting.setupTempFileOnly().setTempDir(folder).streamCache);
        } catch (IOException e) {
            throw new IOException(file.getFileName() + " is not a PDF that can be read: " + e.getMessage(), e);
        }
    }
}
