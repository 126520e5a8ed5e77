package corewright.drawing.kit;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * A typeface at a size, and how much paper words take in it. The type scale in points: 6.5 readings, 7.5 notes, 8.5
 * labels, 10.5 text, 14 card heads, 20 answer, 30 card title.
 *
 * @param points 1/72 inch
 */
public record Type(Typeface face, double points) {
    public static final Type READING = new Type(Typeface.CONDENSED_SEMIBOLD, 6.5);
    public static final Type READING_BOLD = new Type(Typeface.CONDENSED_BOLD, 6.5);
    public static final Type SMALL = new Type(Typeface.CONDENSED, 6.5);
    public static final Type FEATURE = new Type(Typeface.CONDENSED, 7);
    public static final Type NOTE = new Type(Typeface.TEXT, 7.5);
    public static final Type LABEL = new Type(Typeface.TEXT_SEMIBOLD, 8.5);
    public static final Type LABEL_BOLD = new Type(Typeface.TEXT_BOLD, 8.5);

    /** Width of a thin space, which the fonts lack and {@link Paper} leaves as a gap, in ems. */
    static final double THIN_EM = 0.16;

    static final char THIN = '\u2009';

    private static final double MM_PER_POINT = 25.4 / 72;

    /** Below this nothing is read on a copy; what is longer still takes more lines. */
    private static final double SMALLEST = 6.5;

    private static final double STEP = 0.25;

    private record Glyph(Typeface face, String text) {}

    /** Letters of Latin scripts, which nearly all words are of; others are kept one by one. */
    private static final int LATIN = 0x180;

    /** Advances of the letters below {@link #LATIN}, by face: measured together at a face's first word. */
    private static final AtomicReferenceArray<double[]> LATIN_EMS =
            new AtomicReferenceArray<>(Typeface.values().length);

    private static final Map<Glyph, Double> EMS = new ConcurrentHashMap<>();
    private static final Map<Glyph, Shape> OUTLINES = new ConcurrentHashMap<>();

    private record Halo(Type type, String letter, double mm) {
        Shape outline() {
            return new Area(Pen.solid(2 * mm).stroke().createStrokedShape(type.outline(letter, 0, 0)));
        }
    }

    private static final Map<Halo, Shape> HALOS = new ConcurrentHashMap<>();

    /** The same typeface at another size. */
    public Type at(double otherPoints) {
        return new Type(face, otherPoints);
    }

    /** The em in millimetres. */
    public double sizeMm() {
        return points * MM_PER_POINT;
    }

    /** Height of capitals and figures: 0.702 em, measured on H. */
    public double capMm() {
        return 0.702 * sizeMm();
    }

    /** Depth of g and p below the baseline: 0.21 em. */
    public double descentMm() {
        return 0.21 * sizeMm();
    }

    /** Baseline to baseline where nothing else is said. */
    public double leadMm() {
        return 1.3 * sizeMm();
    }

    /** Advance of a text, millimetres: the sum of the font's own advances, without kerning. */
    public double width(String text) {
        double[] latin = latin(face);
        double ems = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            ems += c < LATIN
                    ? latin[c]
                    : c == THIN ? THIN_EM : EMS.computeIfAbsent(new Glyph(face, String.valueOf(c)), Type::measure);
        }
        return ems * sizeMm();
    }

    private static double[] latin(Typeface face) {
        double[] known = LATIN_EMS.get(face.ordinal());
        if (known == null) {
            known = new double[LATIN];
            for (char c = 0; c < LATIN; c++) {
                known[c] = measure(new Glyph(face, String.valueOf(c)));
            }
            LATIN_EMS.set(face.ordinal(), known);
        }
        return known;
    }

    private static double measure(Glyph glyph) {
        return glyph.face
                        .measure()
                        .getStringBounds(glyph.text, Typeface.CONTEXT)
                        .getWidth()
                / Typeface.MEASURE_SIZE;
    }

    /** The box of a text whose left baseline end is at (x, y): capitals' top to descenders' foot. */
    public Rectangle2D box(String text, double x, double y) {
        return new Rectangle2D.Double(x, y - capMm(), width(text), capMm() + descentMm());
    }

    /** The outline of a text whose left baseline end is at (x, y), for casings. */
    Shape outline(String text, double x, double y) {
        Path2D all = new Path2D.Double();
        double at = x;
        for (String run : text.split(String.valueOf(THIN), -1)) {
            Shape glyphs = OUTLINES.computeIfAbsent(new Glyph(face, run), g -> g.face.measure()
                    .createGlyphVector(Typeface.CONTEXT, g.text)
                    .getOutline());
            double scale = sizeMm() / Typeface.MEASURE_SIZE;
            AffineTransform place = new AffineTransform(scale, 0, 0, scale, at, y);
            all.append(place.createTransformedShape(glyphs), false);
            at += width(run) + THIN_EM * sizeMm();
        }
        return all;
    }

    /**
     * What a pen of twice {@code mm} covers round the letters of a text whose left baseline end is at (x, y). Each letter's is one outline
     * without crossings, worked out once: filling it takes an eighth of what a pen takes to go round.
     */
    Shape halo(String text, double x, double y, double mm) {
        Path2D all = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double at = x;
        for (int i = 0; i < text.length(); i++) {
            String letter = text.substring(i, i + 1);
            Shape halo = HALOS.computeIfAbsent(new Halo(this, letter, mm), Halo::outline);
            all.append(AffineTransform.getTranslateInstance(at, y).createTransformedShape(halo), false);
            at += width(letter);
        }
        return all;
    }

    /** The text broken at spaces into lines no wider than {@code widthMm}; a longer word is parted, never shortened. */
    public List<String> wrap(String text, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text, widthMm)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || width(longer) <= widthMm) {
                line.setLength(0);
                line.append(longer);
            } else {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** The same lines as {@link #wrap} would make, but as even as they get. */
    public List<String> wrapEvenly(String text, double widthMm) {
        List<String> lines = wrap(text, widthMm);
        for (double narrower = widthMm - 1; narrower > 0; narrower--) {
            List<String> other = wrap(text, narrower);
            double most = other.stream().mapToDouble(this::width).max().orElse(0);
            if (other.size() > lines.size() || most > narrower) {
                break;
            }
            lines = other;
        }
        return lines;
    }

    private List<String> words(String text, double widthMm) {
        List<String> words = new ArrayList<>();
        for (String word : text.split(" ", -1)) {
            String rest = word;
            while (width(rest) > widthMm && rest.length() > 1) {
                int end = rest.length() - 1;
                while (end > 1 && width(rest.substring(0, end)) > widthMm) {
                    end--;
                }
                words.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            words.add(rest);
        }
        return words;
    }

    /** The same typeface, at most as large as this one, in which the text takes no more than so many lines. */
    public Type within(String text, double widthMm, int lines) {
        Type type = this;
        while (type.points > SMALLEST && type.wrap(text, widthMm).size() > lines) {
            type = type.at(Math.max(SMALLEST, type.points - STEP));
        }
        return type;
    }
}
