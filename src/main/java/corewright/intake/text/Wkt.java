package corewright.intake.text;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryEditor;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.locationtech.jts.util.AssertionFailedException;

/**
 * OGC well-known text (OGC 06-103r4, chapter 7) to a geometry in millimetres, or the reason why not.
 *
 * @param geometry null where there is a problem
 * @param problem complete after {@code file:line: wkt: }; empty where there is none
 */
public record Wkt(@Nullable Geometry geometry, String problem) {
    /** Checks compare each edge with those beside it, at worst with all: this many take a second. */
    public static final int MOST_VERTICES = 20_000;

    /** Brackets of the deepest geometry a plan needs, MULTIPOLYGON in a collection, with room; each costs stack. */
    private static final int DEEPEST = 8;

    public static Wkt parse(String text, LengthUnit unit) {
        String unreasonable = unreasonable(text);
        if (unreasonable != null) {
            return refused(unreasonable);
        }
        Geometry read;
        try {
            read = new WKTReader().read(text);
        } catch (ParseException e) {
            return refused(found(text) + ", expected well-known text such as POLYGON((0 0,900 0,900 600,0 0)); "
                    + firstLine(e));
        } catch (IllegalArgumentException e) {
            return refused(ringProblem(e));
        } catch (AssertionFailedException e) { // the library's word for a POINT of several places
            return refused(found(text) + ", expected one place in a POINT");
        }
        if (read.isEmpty()) {
            return refused("found an empty geometry");
        }
        String invalid = invalid(read, unit);
        return invalid != null ? refused(invalid) : new Wkt(inMm(read, unit), "");
    }

    private static Wkt refused(String problem) {
        return new Wkt(null, problem);
    }

    private static @Nullable String unreasonable(String text) {
        if (text.isEmpty()) {
            return "found nothing, expected well-known text such as POINT(1200 350)";
        }
        int depth = 0;
        int commas = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            commas += c == ',' ? 1 : 0;
            if (c == ')' && depth == 0 && !text.substring(i + 1).isBlank()) {
                return found(text.substring(i + 1).strip())
                        + " after the geometry, expected one geometry and nothing else";
            }
            if (depth > DEEPEST) {
                return "brackets are nested more than " + DEEPEST + " deep";
            }
        }
        return commas >= MOST_VERTICES
                ? "found more than " + MOST_VERTICES + " points, expected fewer: simplify the drawing"
                : null;
    }

    private static String found(String text) {
        return "found \"" + (text.length() > 60 ? text.substring(0, 57) + "..." : text).replaceAll("\\s+", " ") + "\"";
    }

    private static String firstLine(ParseException e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("").replaceAll("[\\p{Cntrl}]", " ");
    }

    private static String ringProblem(IllegalArgumentException e) {
        String message = String.valueOf(e.getMessage());
        if (message.contains("closed")) {
            return "found a ring that is not closed, expected its last point to repeat its first";
        }
        return "found too few points, expected at least 2 for a line and 4 for a ring";
    }

    private static @Nullable String invalid(Geometry read, LengthUnit unit) {
        double largest = Lengths.LARGEST_MM / unit.mm;
        for (Coordinate c : read.getCoordinates()) {
            if (!(Math.abs(c.x) <= largest && Math.abs(c.y) <= largest)) {
                return "found a point (" + c.x + " " + c.y + "), expected coordinates within 1 km";
            }
        }
        TopologyValidationError error = new IsValidOp(read).getValidationError();
        if (error == null) {
            return null;
        }
        Coordinate at = error.getCoordinate();
        String where = at == null ? "" : " near (" + Numerals.plain(at.x) + " " + Numerals.plain(at.y) + ")";
        return switch (error.getErrorType()) {
            case TopologyValidationError.SELF_INTERSECTION, TopologyValidationError.RING_SELF_INTERSECTION ->
                "found an outline that crosses or touches itself" + where + ", expected one that does not";
            case TopologyValidationError.TOO_FEW_POINTS -> "found too few different points" + where;
            default ->
                "found an impossible geometry" + where + ": "
                        + error.getMessage().toLowerCase(Locale.ROOT);
        };
    }

    /** A copy in millimetres, without heights. */
    private static Geometry inMm(Geometry read, LengthUnit unit) {
        return new GeometryEditor(new GeometryFactory()).edit(read, new GeometryEditor.CoordinateOperation() {
            @Override
            public Coordinate[] edit(Coordinate[] coordinates, Geometry part) {
                Coordinate[] scaled = new Coordinate[coordinates.length];
                for (int i = 0; i < scaled.length; i++) {
                    scaled[i] = new CoordinateXY(coordinates[i].x * unit.mm, coordinates[i].y * unit.mm);
                }
                return scaled;
            }
        });
    }
}
