package corewright.report.page;

import corewright.drawing.plates.Plate;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A plate as a picture of 200 dots per inch, which the file says, so that it prints at its true size. */
final class PngPlate {
    private static final double DOTS_PER_MM = 200 / 25.4;

    private PngPlate() {}

    static void write(Plate plate, Path file) throws IOException {
        write(plate.widthMm(), plate.heightMm(), plate::paint, file);
    }

    /** Any sheet of that size; one unit of what is painted on is one millimetre. */
    static void write(double widthMm, double heightMm, Consumer<Graphics2D> painting, Path file) throws IOException {
        BufferedImage image = new BufferedImage(
                (int) Math.round(widthMm * DOTS_PER_MM),
                (int) Math.round(heightMm * DOTS_PER_MM),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(DOTS_PER_MM, DOTS_PER_MM);
        painting.accept(graphics);
        graphics.dispose();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(new IIOImage(image, null, resolution(writer, image)));
        } finally {
            writer.dispose();
        }
        Files.write(
                file, bytes.toByteArray()); // from memory: the image library says of a full disk only that it failed
    }

    /** PNG's pHYs chunk: whole dots per metre, both ways. */
    private static IIOMetadata resolution(ImageWriter writer, BufferedImage image) throws IOException {
        IIOMetadata data = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
        IIOMetadataNode size = new IIOMetadataNode("pHYs");
        String dots = Long.toString(Math.round(DOTS_PER_MM * 1000));
        size.setAttribute("pixelsPerUnitXAxis", dots);
        size.setAttribute("pixelsPerUnitYAxis", dots);
        size.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
        root.appendChild(size);
        data.mergeTree("javax_imageio_png_1.0", root);
        return data;
    }
}
