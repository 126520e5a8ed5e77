package corewright.intake.drawn;

import corewright.intake.text.Clean;
import corewright.intake.text.Decimals;
import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.batik.parser.AWTTransformProducer;
import org.apache.batik.parser.ParseException;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The attribute {@code transform}, as Batik reads it. Source: W3C, SVG 1.1 (second edition), chapter 7.6. */
final class SvgTransform {
    private static final double LARGEST = 1e9;

    private SvgTransform() {}

    /**
     * From an element's coordinates to its parent's.
     *
     * @throws IllegalArgumentException a sentence, where the text is none
     */
    static AffineTransformation parse(String text) {
        try {
            AffineTransform t = AWTTransformProducer.createAffineTransform(text);
            double[] m = new double[6]; // by columns
            t.getMatrix(m);
            if (DoubleStream.of(m).allMatch(each -> Math.abs(each) <= LARGEST)) {
                return new AffineTransformation(m[0], m[2], m[4], m[1], m[3], m[5]);
            }
            throw new IllegalArgumentException("found the transform \"" + Clean.line(text, 60) + "\"");
        } catch (ParseException e) {
            throw new IllegalArgumentException("found the transform \"" + Clean.line(text, 60) + "\"", e);
        }
    }

    /** The numbers of a list with spaces or commas between them. */
    static List<Double> numbers(String text) {
        return Stream.of(text.strip().split("[\\s,]+"))
                .filter(w -> !w.isEmpty())
                .map(SvgTransform::number)
                .toList();
    }

    private static Double number(String word) {
        Double number = Decimals.parse(word, LARGEST);
        if (number == null) {
            throw new IllegalArgumentException("found \"" + Clean.line(word, 60) + "\", expected a number within 1e9");
        }
        return number;
    }
}
