package corewright.intake.drawn;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.ParseException;
import org.apache.batik.parser.PathParser;
import org.locationtech.jts.geom.Coordinate;

/**
 * The path of an SVG element as open and closed lines: Batik reads it, the Java library flattens its curves. Batik reckons
 * in single precision: a place 10 m out is kept to 0.001 mm.
 *
 * <p>Source: W3C, Scalable Vector Graphics 1.1 (second edition), chapter 8.3.
 */
final class SvgPath {
    private static final double LARGEST = 1e9;

    /** A line of a path. */
    record Sub(List<Coordinate> points, boolean closed) {}

    private final List<Sub> subs = new ArrayList<>();
    private List<Coordinate> line = new ArrayList<>();
    private int points;

    private SvgPath() {}

    /**
     * The lines of a path.
     *
     * @param tolerance greatest distance of a chord from its curve
     * @throws IllegalArgumentException a sentence, where the text is no path
     */
    static List<Sub> parse(String text, double tolerance) {
        if (text.isBlank()) {
            return List.of();
        }
        if (!text.strip().startsWith("M") && !text.strip().startsWith("m")) {
            throw new IllegalArgumentException("expected the path to begin with M");
        }
        Counted read = new Counted(text);
        AWTPathProducer path = new AWTPathProducer();
        PathParser parser = new PathParser();
        parser.setPathHandler(path);
        try {
            parser.parse(read);
            return lines(path.getShape(), tolerance);
        } catch (ParseException e) {
            throw new IllegalArgumentException("found no path of SVG from character " + read.at + " on", e);
        }
    }

    /** The lines of a shape, as {@link #parse}. */
    static List<Sub> lines(Shape shape, double tolerance) {
        return new SvgPath().lines(shape.getPathIterator(null, tolerance));
    }

    /** Hands out one character at a time, so that the last one read is the one at fault. */
    private static final class Counted extends Reader {
        private final String text;
        private int at;

        Counted(String text) {
            this.text = text;
        }

        @Override
        public int read(char[] into, int from, int count) {
            if (at == text.length()) {
                return -1;
            }
            into[from] = text.charAt(at++);
            return 1;
        }

        @Override
        public void close() {}
    }

    private List<Sub> lines(PathIterator path) {
        double[] at = new double[6];
        Coordinate start = new Coordinate();
        for (; !path.isDone(); path.next()) {
            int step = path.currentSegment(at);
            if (step == PathIterator.SEG_CLOSE) {
                finish(true);
                line.add(start); // after it a path goes on from where it began
                continue;
            }
            if (!(Math.abs(at[0]) <= LARGEST && Math.abs(at[1]) <= LARGEST)) {
                throw new IllegalArgumentException("expected numbers within 1e9");
            }
            Coordinate place = new Coordinate(at[0], at[1]);
            if (step == PathIterator.SEG_MOVETO) {
                finish(false);
                start = place;
            }
            line.add(place);
            if (points + line.size() > Drawing.MOST_POINTS) {
                throw new IllegalArgumentException("expected at most " + Drawing.MOST_POINTS + " points");
            }
        }
        finish(false);
        return subs;
    }

    private void finish(boolean closed) {
        if (line.size() > 1) {
            points += line.size();
            subs.add(new Sub(line, closed));
        }
        line = new ArrayList<>();
    }
}
