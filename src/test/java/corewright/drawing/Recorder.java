package corewright.drawing;

import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.batik.ext.awt.g2d.AbstractGraphics2D;
import org.apache.batik.ext.awt.g2d.GraphicContext;

/** A Graphics2D that notes every call: words with their boxes, and everything as one line of text. */
public final class Recorder extends AbstractGraphics2D {
    /** Words as drawn, their box on the page in millimetres. */
    public record Words(String text, String font, double size, Rectangle2D box) {}

    /** Half the halo of a reading: words may be as near as that and still stand apart. */
    private static final double TOUCH = 0.05;

    public final List<Words> words;
    public final List<String> calls;
    public final List<Rectangle2D> ink;

    public Recorder() {
        super(false);
        gc = new GraphicContext(new AffineTransform());
        words = new ArrayList<>();
        calls = new ArrayList<>();
        ink = new ArrayList<>();
    }

    /** Notes in the same lists, with a clip and a transform of its own. */
    private Recorder(Recorder other) {
        super(other);
        words = other.words;
        calls = other.calls;
        ink = other.ink;
    }

    @Override
    public void drawString(String text, float x, float y) {
        Font font = getFont();
        double width = 0;
        for (Typeface face : Typeface.values()) {
            if (face.fullName().equals(font.getFontName(Locale.ROOT))) {
                width = new Type(face, font.getSize2D() / (25.4 / 72)).width(text);
            }
        }
        double size = font.getSize2D();
        Rectangle2D box = new Rectangle2D.Double(x, y - 0.702 * size, width, 0.702 * size);
        words.add(new Words(
                text,
                font.getFontName(Locale.ROOT),
                size,
                getTransform().createTransformedShape(box).getBounds2D()));
        calls.add("text " + text + " " + font.getFontName(Locale.ROOT) + " " + size + " " + x + " " + y);
    }

    @Override
    public void draw(Shape shape) {
        BasicStroke stroke = (BasicStroke) getStroke();
        calls.add("draw " + stroke.getLineWidth() + " " + getColor().getRGB() + path(shape));
        note(shape, stroke.getLineWidth() / 2);
    }

    @Override
    public void fill(Shape shape) {
        calls.add("fill " + getColor().getRGB() + path(shape));
        note(shape, 0);
    }

    private void note(Shape shape, double grow) {
        Rectangle2D b = getTransform().createTransformedShape(shape).getBounds2D();
        if (!Color.WHITE.equals(getColor())) {
            Rectangle2D all = new Rectangle2D.Double(
                    b.getX() - grow, b.getY() - grow, b.getWidth() + 2 * grow, b.getHeight() + 2 * grow);
            Shape clip = getClip();
            Rectangle2D seen = clip == null
                    ? all
                    : all.createIntersection(
                            getTransform().createTransformedShape(clip).getBounds2D());
            if (clip == null || !seen.isEmpty()) {
                ink.add(seen);
            }
        }
    }

    private static String path(Shape shape) {
        StringBuilder text = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            text.append(' ')
                    .append(i.currentSegment(at))
                    .append(' ')
                    .append(at[0])
                    .append(' ')
                    .append(at[1]);
        }
        return text.toString();
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform at) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform at) {
        throw new UnsupportedOperationException();
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, ImageObserver observer) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int dx, int dy) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void setXORMode(Color colour) {
        throw new UnsupportedOperationException();
    }

    @Override
    public java.awt.FontMetrics getFontMetrics(Font font) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Graphics create() {
        return new Recorder(this);
    }

    @Override
    public boolean hit(Rectangle rectangle, Shape shape, boolean onStroke) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void dispose() {}

    public static Recorder of(java.util.function.Consumer<Graphics2D> painter) {
        Recorder recorder = new Recorder();
        painter.accept(recorder);
        return recorder;
    }

    /** Words that stand on others, each pair once. */
    public List<String> clashes() {
        List<String> clashes = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            for (int j = 0; j < i; j++) {
                Rectangle2D shared =
                        words.get(i).box().createIntersection(words.get(j).box());
                if (shared.getWidth() > TOUCH && shared.getHeight() > TOUCH) {
                    clashes.add(words.get(j).text() + " / " + words.get(i).text());
                }
            }
        }
        return clashes;
    }
}
