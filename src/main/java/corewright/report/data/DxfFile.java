package corewright.report.data;

import corewright.report.page.Numbers;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * An ASCII DXF drawing of release 12, which every drawing program reads: closed polylines, circles and texts on layers, in
 * millimetres.
 *
 * <p>Source: Autodesk, DXF Reference, release 12. Layer names hold capitals, digits, $, - and _, at most 31.
 */
final class DxfFile {
    /** Colour numbers every program knows: 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black or white. */
    private static final int COLOURS = 7;

    private static final int LONGEST_LAYER = 31;

    private final Map<String, Integer> layers = new LinkedHashMap<>();
    private final StringBuilder entities = new StringBuilder();

    /** The rings of polygons as closed polylines. */
    void rings(String layer, Geometry area) {
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                ring(layer, polygon.getExteriorRing());
                for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                    ring(layer, polygon.getInteriorRingN(hole));
                }
            }
        }
    }

    private void ring(String layer, LinearRing ring) {
        begin("POLYLINE", layer);
        group(66, "1");
        place(0, 0);
        group(70, "1");
        for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
            Coordinate corner = ring.getCoordinateN(i);
            begin("VERTEX", layer);
            place(corner.x, corner.y);
        }
        begin("SEQEND", layer);
    }

    void circle(String layer, double x, double y, double radius) {
        begin("CIRCLE", layer);
        place(x, y);
        group(40, Numbers.rounded(radius, 4));
    }

    /** Letters outside ASCII are written as {@code \U+00E4}, as the format has it. */
    void text(String layer, double x, double y, double height, String text) {
        begin("TEXT", layer);
        place(x, y);
        group(40, Numbers.rounded(height, 4));
        StringBuilder plain = new StringBuilder();
        for (char c : text.toCharArray()) {
            boolean ascii = c >= ' ' && c < 0x7F;
            plain.append(ascii ? String.valueOf(c) : String.format(Locale.ROOT, "\\U+%04X", (int) c));
        }
        group(1, plain.toString());
    }

    /** The whole file. */
    String text() {
        StringBuilder file = new StringBuilder("0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n0\nENDSEC\n");
        file.append("0\nSECTION\n2\nTABLES\n");
        file.append(
                "0\nTABLE\n2\nLTYPE\n70\n1\n0\nLTYPE\n2\nCONTINUOUS\n70\n64\n3\nSolid line\n72\n65\n73\n0\n40\n0\n");
        file.append("0\nENDTAB\n0\nTABLE\n2\nLAYER\n70\n").append(layers.size()).append('\n');
        layers.forEach((name, colour) -> file.append("0\nLAYER\n2\n")
                .append(name)
                .append("\n70\n0\n62\n")
                .append(colour)
                .append("\n6\nCONTINUOUS\n"));
        file.append("0\nENDTAB\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n").append(entities);
        return file.append("0\nENDSEC\n0\nEOF\n").toString();
    }

    /** A name a layer may have. */
    static String layer(String name) {
        String plain = name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9$_-]", "-");
        return plain.substring(0, Math.min(LONGEST_LAYER, plain.length()));
    }

    private void begin(String type, String layer) {
        String name = layer(layer);
        layers.putIfAbsent(name, 1 + layers.size() % COLOURS);
        group(0, type);
        group(8, name);
    }

    private void place(double x, double y) {
        group(10, Numbers.rounded(x, 4));
        group(20, Numbers.rounded(y, 4));
        group(30, "0");
    }

    private void group(int code, String value) {
        entities.append(code).append('\n').append(value).append('\n');
    }
}
