package corewright.report.page;

import corewright.drawing.plates.Plate;
import java.awt.Graphics2D;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A plate as SVG 1.1: width and height in millimetres, words as text. */
final class SvgPlate {
    private static final String SVG = "http://www.w3.org/2000/svg";

    /** Decimals of a coordinate: a thousandth of a millimetre. */
    private static final int PRECISION = 3;

    private SvgPlate() {}

    static void write(Plate plate, Path file) throws IOException {
        write(plate.widthMm(), plate.heightMm(), plate::paint, file);
    }

    /** Any sheet of that size; one unit of what is painted on is one millimetre. */
    static void write(double widthMm, double heightMm, Consumer<Graphics2D> painting, Path file) throws IOException {
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment("Corewright");
        context.setPrecision(PRECISION);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        painting.accept(graphics);
        Element root = graphics.getRoot();
        root.setAttribute("width", Numbers.full(widthMm) + "mm");
        root.setAttribute("height", Numbers.full(heightMm) + "mm");
        root.setAttribute("viewBox", "0 0 " + Numbers.full(widthMm) + " " + Numbers.full(heightMm));
        StringWriter text = new StringWriter();
        graphics.stream(root, text, true, false);
        Files.writeString(file, tidy(text.toString()), StandardCharsets.UTF_8);
    }

    /** No document type to be fetched from afar, and a plain typeface where ours is not installed. */
    private static String tidy(String svg) {
        return svg.replaceFirst("(?s)<!DOCTYPE[^>]*>\\s*", "")
                .replaceAll("font-family:'([^']*)'", "font-family:'$1',sans-serif");
    }
}
