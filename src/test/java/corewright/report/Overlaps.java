package corewright.report;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/** Words of a PDF that lie on other words, or on a hole's mark they do not name, read from the file alone: ink against ink. */
public final class Overlaps extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    /** Boxes of neighbours may touch: a line's width on a good printer. */
    private static final double TOUCH = 0.15;

    /** Smaller circles are dots of a pattern. */
    private static final double LEAST_MARK = 2;

    /** Larger ones are no hole's: the ring to find a hole by is 20 mm. */
    private static final double LARGEST_MARK = 21;

    /** For text to act on. */
    private static final double LEAST_CONTRAST = 7;

    private record Glyph(Rectangle2D ink, Run run) {}

    private static final class Run {
        private final StringBuilder text = new StringBuilder();
        private @Nullable Rectangle2D box;

        void add(String letter, Rectangle2D ink) {
            text.append(letter);
            if (!ink.isEmpty()) {
                Rectangle2D known = box;
                box = known == null ? ink : known.createUnion(ink);
            }
        }

        Rectangle2D box() {
            Rectangle2D known = box;
            return known == null ? new Rectangle2D.Double() : known;
        }
    }

    /** What was filled with a colour or cased in it, in the order of painting. */
    private record Ground(Rectangle2D box, @Nullable GeneralPath shape, double light) {}

    private record Circle(double x, double y, double radius) {}

    private final Map<PDFont, Map<Integer, GeneralPath>> outlines = new IdentityHashMap<>();
    private final List<Glyph> glyphs = new ArrayList<>();
    private final List<Circle> circles = new ArrayList<>();
    private GeneralPath path = new GeneralPath();
    private GeneralPath part = new GeneralPath();
    private int curves;
    private final List<Ground> grounds = new ArrayList<>();
    private final List<String> faint = new ArrayList<>();
    private final List<String> unmarked = new ArrayList<>();
    private int depth;
    private boolean white;
    private boolean clips;
    private Run run = new Run();

    private Overlaps(PDPage page) {
        super(page);
    }

    /** Every overlap of a file, with its page, what lies on what, and where in millimetres from the lower left. */
    public static List<String> of(Path file) throws IOException {
        List<String> found = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (int i = 0; i < pdf.getNumberOfPages(); i++) {
                String at = file.getFileName() + " page " + (i + 1) + ": ";
                read(pdf.getPage(i)).found().forEach(f -> found.add(at + f));
            }
        }
        return found;
    }

    /** A page, read once for all that is asked of it. */
    static Overlaps read(PDPage of) throws IOException {
        Overlaps page = new Overlaps(of);
        page.processPage(of);
        return page;
    }

    /** Words that no mark of the page's structure holds. */
    List<String> unmarked() {
        return List.copyOf(unmarked);
    }

    /** Letters whose ink and ground are less than 7 : 1 apart. */
    List<String> faint() {
        return List.copyOf(faint);
    }

    /** Words of a page, ink alone, that come nearer to its edge than this. */
    static List<String> beyond(PDPage of, double marginMm) throws IOException {
        Rectangle2D within = new Rectangle2D.Double(
                marginMm,
                marginMm,
                of.getMediaBox().getWidth() * MM - 2 * marginMm,
                of.getMediaBox().getHeight() * MM - 2 * marginMm);
        return read(of).glyphs.stream()
                .filter(g -> !within.contains(g.ink))
                .map(g -> g.run.text + " at " + g.ink)
                .distinct()
                .toList();
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, @Nullable COSDictionary properties) {
        depth++;
    }

    @Override
    public void endMarkedContentSequence() {
        depth--;
    }

    /** Relative luminance (WCAG 2.1). */
    private static double light(PDColor colour) throws IOException {
        int rgb = colour.toRGB();
        double[] weights = {0.2126, 0.7152, 0.0722};
        double light = 0;
        for (int i = 0; i < 3; i++) {
            double c = ((rgb >> (16 - 8 * i)) & 255) / 255.0;
            light += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return light;
    }

    private static double contrast(double a, double b) {
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** The last ground painted at the middle of a letter; paper is white. */
    private double under(Rectangle2D letter) {
        double x = letter.getCenterX();
        double y = letter.getCenterY();
        for (int i = grounds.size() - 1; i >= 0; i--) {
            Ground ground = grounds.get(i);
            GeneralPath shape = ground.shape;
            if (ground.box.contains(x, y) && (shape == null || shape.contains(x, y))) {
                return ground.light;
            }
        }
        return 1;
    }

    /** Words on words or marks: what lies on what, and where in millimetres from the lower left. */
    Set<String> found() {
        Set<String> found = new LinkedHashSet<>();
        List<Glyph> sorted = new ArrayList<>(glyphs);
        sorted.sort((a, b) -> Double.compare(a.ink.getX(), b.ink.getX()));
        for (int i = 0; i < sorted.size(); i++) {
            Glyph a = sorted.get(i);
            for (int j = i + 1; j < sorted.size() && sorted.get(j).ink.getX() < a.ink.getMaxX() - TOUCH; j++) {
                Glyph b = sorted.get(j);
                Rectangle2D both = a.ink.createIntersection(b.ink);
                if (a.run != b.run && both.getWidth() > TOUCH && both.getHeight() > TOUCH) {
                    found.add(said(a.run, "on \"" + b.run.text + "\""));
                }
            }
            for (Circle circle : circles) {
                if (on(circle, a.ink) && !names(circle, a.run.box())) {
                    found.add(said(a.run, String.format(Locale.ROOT, "on a mark of %.1f mm", 2 * circle.radius)));
                }
            }
        }
        return found;
    }

    private static String said(Run run, String what) {
        return String.format(
                Locale.ROOT,
                "\"%s\" %s at %.0f, %.0f",
                run.text,
                what,
                run.box().getCenterX(),
                run.box().getCenterY());
    }

    private static boolean on(Circle c, Rectangle2D ink) {
        double dx = Math.max(0, Math.max(ink.getX() - c.x, c.x - ink.getMaxX()));
        double dy = Math.max(0, Math.max(ink.getY() - c.y, c.y - ink.getMaxY()));
        return Math.hypot(dx, dy) < c.radius - TOUCH;
    }

    /** A mark's own number stands in its middle. */
    private static boolean names(Circle c, Rectangle2D words) {
        return Math.hypot(words.getCenterX() - c.x, words.getCenterY() - c.y) < c.radius / 2
                && words.getWidth() < 2 * c.radius;
    }

    @Override
    public void beginText() {
        run = new Run();
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        AffineTransform to = matrix.createAffineTransform();
        to.scale(0.001, 0.001);
        Rectangle2D box = to.createTransformedShape(outline(font, code)).getBounds2D();
        Rectangle2D ink =
                new Rectangle2D.Double(box.getX() * MM, box.getY() * MM, box.getWidth() * MM, box.getHeight() * MM);
        String letter = Objects.requireNonNullElse(font.toUnicode(code), "?");
        if (!ink.isEmpty()) {
            Rectangle2D clip = getGraphicsState().getCurrentClippingPath().getBounds2D();
            if (!clip.contains(box.getCenterX(), box.getCenterY())) {
                return;
            }
            glyphs.add(new Glyph(ink, run));
            double contrast = contrast(light(getGraphicsState().getNonStrokingColor()), under(box));
            if (contrast < LEAST_CONTRAST) {
                faint.add(String.format(Locale.ROOT, "%s in \"%s\", %.1f : 1", letter, run.text, contrast));
            }
            if (depth == 0) {
                unmarked.add(letter);
            }
        }
        run.add(letter, ink);
    }

    private GeneralPath outline(PDFont font, int code) throws IOException {
        Map<Integer, GeneralPath> known = outlines.computeIfAbsent(font, f -> new HashMap<>());
        GeneralPath outline = known.get(code);
        if (outline == null) {
            outline = ((PDVectorFont) font).getNormalizedPath(code);
            known.put(code, outline);
        }
        return outline;
    }

    @Override
    public void moveTo(float x, float y) {
        circle();
        path.moveTo(x, y);
        part.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
        curves = -100;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
        part.curveTo(x1, y1, x2, y2, x3, y3);
        curves++;
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    /** White ones are only the ground of a mark. */
    private void circle() {
        Rectangle2D box = part.getBounds2D();
        double diameter = box.getWidth() * MM;
        boolean round = !white && curves == 4 && Math.abs(box.getWidth() - box.getHeight()) < 0.01;
        if (round && diameter >= LEAST_MARK && diameter <= LARGEST_MARK) {
            Circle circle = new Circle(box.getCenterX() * MM, box.getCenterY() * MM, diameter / 2);
            boolean shown = getGraphicsState()
                    .getCurrentClippingPath()
                    .getBounds2D()
                    .contains(box.getCenterX(), box.getCenterY());
            if (shown) {
                circles.add(circle);
            }
        }
        curves = 0;
        part = new GeneralPath();
    }

    private void done() {
        circle();
        path = new GeneralPath();
    }

    /** A white line round letters is their ground; other lines are ink. */
    @Override
    public void strokePath() throws IOException {
        double light = light(getGraphicsState().getStrokingColor());
        if (light > 0.99) {
            grounds.add(new Ground(path.getBounds2D(), null, light));
        }
        done();
    }

    @Override
    public void fillPath(int rule) throws IOException {
        double light = light(getGraphicsState().getNonStrokingColor());
        grounds.add(new Ground(path.getBounds2D(), path, light));
        white = light > 0.99;
        done();
        white = false;
    }

    @Override
    public void fillAndStrokePath(int rule) throws IOException {
        fillPath(rule);
    }

    @Override
    public void endPath() {
        if (clips) {
            getGraphicsState().intersectClippingPath(path);
            clips = false;
        }
        curves = 0;
        path = new GeneralPath();
        part = new GeneralPath();
    }

    @Override
    public void clip(int rule) {
        clips = true;
    }

    @Override
    public Point2D getCurrentPoint() {
        Point2D at = path.getCurrentPoint();
        return at == null ? new Point2D.Float() : at;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        circle();
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
        curves = -100;
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName name) {}
}
