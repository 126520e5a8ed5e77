package corewright.report.page;

import corewright.store.Pictures;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.jspecify.annotations.Nullable;

/** A photograph or a logo of the survey, as it is printed. */
public final class PictureFile {
    /** Longer side of a photograph on paper, pixels: 84 mm at 300 dots per inch. */
    private static final int LONGER_SIDE = 1000;

    private PictureFile() {}

    /** Small enough for paper, on white; null where there is none that can be read. */
    public static @Nullable BufferedImage read(Pictures pictures, String name) throws IOException {
        byte[] content = pictures.content(name);
        if (content == null) {
            return null;
        }
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return null;
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(in, true, true);
                return smaller(reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | IllegalArgumentException e) {
            return null; // damaged: intake looked at its head alone
        }
    }

    private static BufferedImage smaller(ImageReader reader) throws IOException {
        int longer = Math.max(reader.getWidth(0), reader.getHeight(0));
        int every = Math.max(1, longer / (2 * LONGER_SIDE));
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        BufferedImage read = reader.read(0, param);
        double scale = Math.min(1, (double) LONGER_SIDE / Math.max(read.getWidth(), read.getHeight()));
        int width = Math.max(1, (int) Math.round(read.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(read.getHeight() * scale));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(read, 0, 0, width, height, Color.WHITE, null);
        g.dispose();
        return small;
    }
}
