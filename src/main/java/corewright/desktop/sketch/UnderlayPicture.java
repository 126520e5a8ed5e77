package corewright.desktop.sketch;

import corewright.desktop.photos.Photos;
import corewright.desktop.plan.Pixels;
import corewright.report.page.PdfPage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * What is laid under a plan: a picture, or a page of a PDF.
 *
 * @param page the first is 1
 * @param pages 1 for a picture
 */
public record UnderlayPicture(Pixels pixels, int page, int pages) {
    /** Sharp enough to touch a point of a deck of ten metres to 4 mm, and 27 MB when decoded. */
    private static final int LONGER_SIDE = 2600;

    /** Reads a file; for a thread that may take its time. */
    public static UnderlayPicture read(Path file, int page) throws IOException {
        if (String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            return new UnderlayPicture(Pixels.of(PdfPage.picture(file, page, LONGER_SIDE)), page, PdfPage.count(file));
        }
        return new UnderlayPicture(Pixels.of(Photos.small(Photos.read(file), LONGER_SIDE)), 1, 1);
    }
}
