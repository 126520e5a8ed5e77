package corewright.drawing.kit;

import corewright.survey.Face;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Places on a face as people call them across a deck: "E, starboard 2", and back again from "E s2". */
public final class PlaceNames {
    private static final Pattern CALLED =
            Pattern.compile("\\s*([A-Za-z]{1,2})[ ,]*(?:(stbd|starboard|s|port|p|up|u|down|d)[ .,]*)?([0-9]{1,2})\\s*");

    /** Nearer is on it: half a centimetre is what a tape on a deck is good for. */
    private static final double ON_LINE_MM = 5;

    private final Face face;
    private final VoiceGrid grid;

    private PlaceNames(Face face) {
        this.face = face;
        grid = VoiceGrid.of(face);
    }

    public static PlaceNames of(Face face) {
        return new PlaceNames(face);
    }

    /** The square a place lies in: "E, starboard 2"; empty off the face's box. */
    public String at(double xMm, double yMm) {
        String column = nameAt(grid.columns(), xMm);
        String row = nameAt(grid.rows(), yMm);
        return column.isEmpty() || row.isEmpty() ? "" : column + ", " + row;
    }

    /** The squares an area covers, as letters and as rows: "E and F, starboard 2". */
    public String over(Geometry area) {
        Envelope box = area.getEnvelopeInternal();
        List<String> letters = names(grid.columns(), box.getMinX(), box.getMaxX());
        List<String> rows = names(grid.rows(), box.getMinY(), box.getMaxY());
        return and(letters) + ", " + and(rows);
    }

    /**
     * {@code 2.25 m aft, 0.60 m to starboard}.
     *
     * @param length words for a distance in millimetres, 0 or more
     */
    public String measured(double xMm, double yMm, DoubleFunction<String> length) {
        String along = length.apply(Math.abs(xMm)) + " " + (xMm < 0 ? "forward" : "aft");
        String side =
                grid.steep() ? (yMm < 0 == grid.highIsPlusY() ? "down" : "up") : (yMm < 0 ? "to port" : "to starboard");
        if (Math.abs(yMm) < ON_LINE_MM && !grid.steep()) {
            return along + ", on the centreline";
        }
        return along + ", " + length.apply(Math.abs(yMm)) + " " + side;
    }

    /** The middle of the square somebody calls; nothing where the face has no such square. */
    public Optional<Spot> find(String called) {
        Matcher m = CALLED.matcher(called);
        if (!m.matches()) {
            return Optional.empty();
        }
        String letter = m.group(1).toUpperCase(Locale.ROOT);
        String side = m.group(2) == null ? "" : m.group(2).substring(0, 1).toLowerCase(Locale.ROOT);
        String number = " " + Integer.parseInt(m.group(3));
        return grid.columns().stream()
                .filter(c -> c.name().equals(letter))
                .flatMap(c -> grid.rows().stream()
                        .filter(r -> r.name().startsWith(side) && r.name().endsWith(number))
                        .map(r -> new Spot(face.name(), (c.from() + c.to()) / 2, (r.from() + r.to()) / 2)))
                .findFirst();
    }

    private static String nameAt(List<VoiceGrid.Strip> strips, double at) {
        return strips.stream()
                .filter(s -> at >= s.from() && at <= s.to())
                .map(VoiceGrid.Strip::name)
                .reduce("", (first, last) -> last); // bounds belong to the strip that begins there
    }

    private static List<String> names(List<VoiceGrid.Strip> strips, double from, double to) {
        List<String> names = new ArrayList<>();
        for (VoiceGrid.Strip strip : strips) {
            if (strip.to() > from && strip.from() < to) {
                names.add(strip.name());
            }
        }
        return names;
    }

    private static String and(List<String> names) {
        if (names.size() > 2) {
            String first = names.get(0);
            return first + " to " + names.get(names.size() - 1);
        }
        return String.join(" and ", new TreeSet<>(names));
    }
}
