package corewright.intake.drawn;

import corewright.intake.drawn.Drawing.Place;
import corewright.intake.drawn.Drawing.Stroke;
import corewright.intake.drawn.Drawing.Unread;
import corewright.intake.text.Clean;
import corewright.intake.text.Notes;
import corewright.survey.Origin;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * The lines of an SVG drawing: path, polygon, polyline, line, rect, circle and ellipse, with the transforms of all groups
 * about them. One user unit of the outermost element is one unit of length; viewBox and width say how large a picture is
 * shown and are left alone. y is turned upwards.
 *
 * <p>A document type is skipped, entities are not expanded and nothing outside the file is opened.
 *
 * <p>Source: W3C, Scalable Vector Graphics 1.1 (second edition), chapters 7 to 9.
 */
public final class Svg {
    /** What these hold is not drawn where it stands. */
    private static final Set<String> UNDRAWN =
            Set.of("defs", "clipPath", "mask", "symbol", "pattern", "marker", "metadata", "style", "title", "desc");

    private static final Set<String> SHAPES =
            Set.of("path", "polygon", "polyline", "line", "rect", "circle", "ellipse");
    private static final Set<String> FRAMES = Set.of("svg", "g", "a", "switch");
    private static final int MOST_ELEMENTS = 100_000;
    private static final int DEEPEST = 100;

    private final String file;
    private final double tolerance;
    private final Predicate<String> isLayer;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Unread> unread = new ArrayList<>();
    private final Deque<Frame> frames = new ArrayDeque<>();
    private int elements;
    private int points;

    /** An open element: its id and its coordinates to the drawing's. */
    private record Frame(String id, AffineTransformation toDrawing) {}

    private Svg(String file, double tolerance, Predicate<String> isLayer) {
        this.file = file;
        this.tolerance = tolerance;
        this.isLayer = isLayer;
    }

    /**
     * The drawing in a file's text; null after a complaint.
     *
     * @param tolerance of chords, in the drawing's units
     * @param isLayer whether an id names a layer; the element's own id comes first, then its groups', the inner before
     */
    public static @Nullable Drawing parse(
            String file, String text, double tolerance, Predicate<String> isLayer, Notes notes) {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(text));
            return new Svg(file, tolerance, isLayer).drawing(xml, notes);
        } catch (XMLStreamException e) {
            long line =
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNumber());
            notes.complain(new Origin(file, line), "", "this is not XML, expected an SVG drawing");
            return null;
        }
    }

    private @Nullable Drawing drawing(XMLStreamReader xml, Notes notes) throws XMLStreamException {
        boolean any = false;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT) {
                frames.pop();
            }
            if (event != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            if (!any && !xml.getLocalName().equals("svg")) {
                notes.expected(origin(xml), "", "<" + xml.getLocalName() + ">", "an SVG drawing");
                return null;
            }
            any = true;
            if (++elements > MOST_ELEMENTS || frames.size() >= DEEPEST || points > Drawing.MOST_POINTS) {
                String most = String.format(
                        Locale.ROOT,
                        "expected at most %d elements, %d deep, and %d points",
                        MOST_ELEMENTS,
                        DEEPEST,
                        Drawing.MOST_POINTS);
                notes.complain(origin(xml), "", most);
                return null;
            }
            element(xml);
        }
        return new Drawing(strokes, unread, "");
    }

    private void element(XMLStreamReader xml) throws XMLStreamException {
        String id = Clean.line(text(xml, "id"), 100);
        Place place = place(xml, id);
        AffineTransformation outer =
                frames.isEmpty() ? new AffineTransformation() : frames.element().toDrawing();
        String kind = xml.getLocalName();
        String style = text(xml, "style").replace(" ", "");
        if (UNDRAWN.contains(kind) || text(xml, "display").equals("none") || style.contains("display:none")) {
            skip(xml);
            return;
        }
        AffineTransformation toDrawing = outer;
        String problem = SHAPES.contains(kind) || FRAMES.contains(kind) ? "" : kind;
        try {
            toDrawing = SvgTransform.parse(text(xml, "transform")).compose(outer);
            if (SHAPES.contains(kind)) {
                shape(xml, place, place.layer().equals(id) ? "" : id, toDrawing);
            }
        } catch (IllegalArgumentException e) {
            problem = kind + ", " + e.getMessage();
        }
        frames.push(new Frame(id, toDrawing));
        if (!problem.isEmpty()) {
            unread.add(new Unread(place, problem));
        }
    }

    private Place place(XMLStreamReader xml, String id) {
        String layer = isLayer.test(id) ? id : "";
        String group = "";
        for (Frame frame : frames) { // the innermost first
            layer = layer.isEmpty() && isLayer.test(frame.id()) ? frame.id() : layer;
            group = group.isEmpty() ? frame.id() : group;
        }
        String shown = !layer.isEmpty() ? layer : group.isEmpty() ? id : group;
        return new Place(shown, elements, Math.max(0, xml.getLocation().getLineNumber()));
    }

    private void shape(XMLStreamReader xml, Place place, String name, AffineTransformation toDrawing) {
        double scale = Math.sqrt(Math.abs(toDrawing.getDeterminant()));
        double own = scale > 0 ? tolerance / scale : tolerance;
        List<SvgPath.Sub> subs = subs(xml, own);
        if (subs.isEmpty()) {
            throw new IllegalArgumentException("expected something drawn");
        }
        for (SvgPath.Sub sub : subs) {
            List<Coordinate> line = new ArrayList<>();
            for (Coordinate p : sub.points()) {
                Coordinate moved = toDrawing.transform(p, new Coordinate());
                line.add(new Coordinate(moved.x, -moved.y));
            }
            points += line.size();
            strokes.add(new Stroke(place, name, line, sub.closed()));
        }
    }

    private List<SvgPath.Sub> subs(XMLStreamReader xml, double own) {
        List<Coordinate> line = new ArrayList<>();
        boolean closed = true;
        switch (xml.getLocalName()) {
            case "path" -> {
                return SvgPath.parse(text(xml, "d"), own);
            }
            case "polygon", "polyline" -> {
                pairs(text(xml, "points"), line);
                closed = xml.getLocalName().equals("polygon");
            }
            case "line" -> {
                line.add(new Coordinate(number(xml, "x1"), number(xml, "y1")));
                line.add(new Coordinate(number(xml, "x2"), number(xml, "y2")));
                closed = false;
            }
            case "rect" -> {
                return rectangle(xml, own);
            }
            default -> {
                boolean circle = xml.getLocalName().equals("circle");
                double rx = positive(xml, circle ? "r" : "rx");
                double ry = circle ? rx : positive(xml, "ry");
                double larger = Math.max(rx, ry);
                new Arcs(own).circle(new Coordinate(0, 0), larger, line);
                double cx = number(xml, "cx");
                double cy = number(xml, "cy");
                line.replaceAll(p -> new Coordinate(cx + p.x * rx / larger, cy + p.y * ry / larger));
            }
        }
        return line.isEmpty() ? List.of() : List.of(new SvgPath.Sub(line, closed));
    }

    /** Chapter 9.2: a missing radius of the corners takes the other's value, and neither is more than half a side. */
    private static List<SvgPath.Sub> rectangle(XMLStreamReader xml, double own) {
        double x = number(xml, "x");
        double y = number(xml, "y");
        double w = positive(xml, "width");
        double h = positive(xml, "height");
        double rx = Math.min(w / 2, Math.abs(number(xml, text(xml, "rx").isEmpty() ? "ry" : "rx")));
        double ry = Math.min(h / 2, Math.abs(number(xml, text(xml, "ry").isEmpty() ? "rx" : "ry")));
        Shape shape = rx == 0 || ry == 0
                ? new Rectangle2D.Double(x, y, w, h)
                : new RoundRectangle2D.Double(x, y, w, h, 2 * rx, 2 * ry);
        return SvgPath.lines(shape, own);
    }

    private static void pairs(String text, List<Coordinate> into) {
        List<Double> numbers = SvgTransform.numbers(text);
        for (int i = 0; i + 1 < numbers.size(); i += 2) {
            into.add(new Coordinate(numbers.get(i), numbers.get(i + 1)));
        }
    }

    private static double positive(XMLStreamReader xml, String name) {
        double value = number(xml, name);
        if (value <= 0) {
            throw new IllegalArgumentException("expected " + name + " above 0");
        }
        return value;
    }

    /** An attribute's number, 0 where it is missing; a unit of px is the user unit. */
    private static double number(XMLStreamReader xml, String name) {
        String text = text(xml, name).strip();
        List<Double> numbers = SvgTransform.numbers(text.endsWith("px") ? text.substring(0, text.length() - 2) : text);
        return numbers.isEmpty() ? 0 : numbers.get(0);
    }

    private static String text(XMLStreamReader xml, String name) {
        String value = xml.getAttributeValue("", name);
        value = value == null ? xml.getAttributeValue(null, name) : value;
        return value == null ? "" : value;
    }

    /** Leaves out an element and all within; its end is consumed too, so no frame is opened. */
    private void skip(XMLStreamReader xml) throws XMLStreamException {
        for (int open = 1; open > 0; ) {
            int event = xml.next();
            open += event == XMLStreamConstants.START_ELEMENT ? 1 : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
        }
    }

    private Origin origin(XMLStreamReader xml) {
        return new Origin(file, Math.max(0, xml.getLocation().getLineNumber()));
    }
}
