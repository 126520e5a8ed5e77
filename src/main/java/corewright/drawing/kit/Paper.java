package corewright.drawing.kit;

import corewright.survey.settings.Settings.Terms;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;

/**
 * A sheet to draw on, in millimetres, y down. One unit of the Graphics2D handed in must be one millimetre.
 */
public final class Paper {
    /** Which point of a text its place means. */
    public enum Anchor {
        LEFT(0),
        CENTRE(0.5),
        RIGHT(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }
    }

    /** A clip may be rounded to a file's units. */
    private static final double CLIP_SLACK_MM = 0.5;

    private final Graphics2D g;
    private final Tone tone;
    private final Terms.Sign decimal;
    private final Parts parts;
    private boolean clipped;

    /** For print: grey pictures, SVG and PDF. */
    public Paper(Graphics2D graphics) {
        this(graphics, Tone.PRINT);
    }

    /** For print, with the reader's decimal sign. */
    public Paper(Graphics2D graphics, Terms.Sign decimal) {
        this(graphics, decimal, Parts.NONE);
    }

    /** The same, telling what is painted. */
    public Paper(Graphics2D graphics, Terms.Sign decimal, Parts parts) {
        this(graphics, Tone.PRINT, decimal, parts);
    }

    /** In the colours of a screen. */
    public Paper(Graphics2D graphics, Tone tone) {
        this(graphics, tone, Terms.Sign.POINT, Parts.NONE);
    }

    private Paper(Graphics2D graphics, Tone tone, Terms.Sign decimal, Parts parts) {
        this.parts = parts;
        g = graphics;
        this.tone = tone;
        this.decimal = decimal;
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }

    /** Paints what is one part of the document. */
    public void part(Parts.Part part, Consumer<Paper> painting) {
        part(part, "", painting);
    }

    /** Paints a drawing that the words tell to whoever does not see it. */
    public void figure(String says, Consumer<Paper> painting) {
        part(Parts.Part.FIGURE, says, painting);
    }

    private void part(Parts.Part part, String says, Consumer<Paper> painting) {
        parts.part(part, says, g, on -> painting.accept(on == g ? this : on(on)));
    }

    private Paper on(Graphics2D other) {
        Paper paper = new Paper(other, tone, decimal, parts);
        paper.clipped = clipped;
        return paper;
    }

    /** Paints on the same sheet where only what lies inside the shape takes ink. */
    public void within(Shape shape, Consumer<Paper> painting) {
        Graphics2D part = (Graphics2D) g.create();
        part.clip(shape);
        Paper within = on(part);
        within.clipped = true;
        painting.accept(within);
        part.dispose();
    }

    /** Whether nothing of a shape would be seen: a file need not hold it, as most of a deck on one sheet of many. */
    private boolean isOutside(Shape shape, double reachMm) {
        if (!clipped) {
            return false;
        }
        Rectangle2D seen = g.getClip().getBounds2D();
        Rectangle2D box = shape.getBounds2D();
        double reach = reachMm + CLIP_SLACK_MM;
        return box.getMaxX() + reach < seen.getMinX()
                || box.getMinX() - reach > seen.getMaxX()
                || box.getMaxY() + reach < seen.getMinY()
                || box.getMinY() - reach > seen.getMaxY();
    }

    /** A line along a shape. */
    public void draw(Shape shape, Pen pen) {
        draw(shape, pen, Tone.INK);
    }

    public void draw(Shape shape, Pen pen, Color colour) {
        if (isOutside(shape, pen.weightMm() * tone.lines() / 2)) {
            return;
        }
        g.setColor(tone.of(colour));
        g.setStroke(tone.lines() == 1 ? pen.stroke() : pen.times(tone.lines()).stroke());
        g.draw(shape);
    }

    /** A line through points x, y, x, y ... */
    public void line(Pen pen, double... xy) {
        draw(path(xy), pen);
    }

    /** White beneath a line, so that it reads on any pattern. */
    public void casing(Shape shape, double widthMm) {
        draw(shape, Pen.solid(widthMm), Tone.WHITE);
    }

    public void fill(Shape shape) {
        fill(shape, Tone.INK);
    }

    public void fill(Shape shape, Color colour) {
        if (isOutside(shape, 0)) {
            return;
        }
        g.setColor(tone.of(colour));
        g.fill(shape);
    }

    public void disc(double x, double y, double diameterMm) {
        disc(x, y, diameterMm, Tone.INK);
    }

    public void disc(double x, double y, double diameterMm, Color colour) {
        fill(circle(x, y, diameterMm), colour);
    }

    /** A white disc or ring ground with an inked edge. */
    public void ring(double x, double y, double diameterMm, Pen pen) {
        fill(circle(x, y, diameterMm), Tone.WHITE);
        draw(circle(x, y, diameterMm), pen);
    }

    public static Shape circle(double x, double y, double diameterMm) {
        return new Ellipse2D.Double(x - diameterMm / 2, y - diameterMm / 2, diameterMm, diameterMm);
    }

    public static Rectangle2D square(double x, double y, double sideMm) {
        return new Rectangle2D.Double(x - sideMm / 2, y - sideMm / 2, sideMm, sideMm);
    }

    /** An open path through points x, y, x, y ... */
    public static Path2D path(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        return path;
    }

    /** A closed path through points x, y, x, y ... */
    public static Path2D closed(double... xy) {
        Path2D path = path(xy);
        path.closePath();
        return path;
    }

    /** A picture, as large as the box lets it be without changing its shape, in the box's upper left. */
    public void picture(BufferedImage picture, Box box) {
        double scale = Math.min(box.width() / picture.getWidth(), box.height() / picture.getHeight());
        g.drawImage(picture, new AffineTransform(scale, 0, 0, scale, box.x(), box.y()), null);
    }

    /** Words with their baseline at y. */
    public void text(String words, double x, double y, Type type, Anchor anchor) {
        text(words, x, y, type, anchor, Tone.INK);
    }

    public void text(String plain, double x, double y, Type type, Anchor anchor, Color colour) {
        String words = Figures.signed(plain, decimal);
        g.setColor(tone.of(colour));
        g.setFont(type.face().font(type.sizeMm()));
        double at = x - anchor.share * type.width(words);
        for (String run : words.split(String.valueOf(Type.THIN), -1)) {
            if (!run.isEmpty()) {
                g.drawString(run, (float) at, (float) y);
            }
            at += type.width(run) + Type.THIN_EM * type.sizeMm();
        }
    }

    /** Words on a paper ground that follows their shape, {@code haloMm} wide. */
    public void haloText(String plain, double x, double y, Type type, Anchor anchor, double haloMm) {
        String words = Figures.signed(plain, decimal);
        double left = x - anchor.share * type.width(words);
        if (tone == Tone.PRINT) {
            casing(type.outline(words, left, y), 2 * haloMm);
        } else { // a screen is painted again and again
            fill(type.halo(words, left, y, tone.lines() * haloMm), Tone.WHITE);
        }
        text(words, left, y, type, Anchor.LEFT);
    }

    /** Words turned by {@code angle} radians clockwise about their anchor. */
    public void turnedText(String words, double x, double y, double angle, Type type, Anchor anchor) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.rotate(angle);
        haloText(words, 0, 0, type, anchor, 0.5);
        g.setTransform(before);
    }
}
