package corewright.desktop.plan;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** A picture made ready for the window on another thread; showing it then copies nothing. */
public final class Pixels {
    private final int width;
    private final int height;
    private final int[] argbPre;

    private Pixels(BufferedImage image) {
        width = image.getWidth();
        height = image.getHeight();
        argbPre = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    public static Pixels of(BufferedImage image) {
        if (image.getType() == BufferedImage.TYPE_INT_ARGB_PRE) {
            return new Pixels(image);
        }
        BufferedImage copy = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = copy.createGraphics();
        g.drawImage(image, 0, 0, null);
        g.dispose();
        return new Pixels(copy);
    }

    public WritableImage image() {
        return new WritableImage(
                new PixelBuffer<>(width, height, IntBuffer.wrap(argbPre), PixelFormat.getIntArgbPreInstance()));
    }
}
