package corewright.drawing.kit;

import corewright.survey.Face;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Names for places, to be said aloud: letters every 500 mm aft (no I, no O), rows counted out from the centreline with
 * their side. "E, starboard two." Letters count from the datum, so that they stay the same on every sheet of a face.
 *
 * @param extent of what is shown of the face, survey millimetres
 * @param originX where letter A begins: at the datum, or at the foremost whole step where the face reaches forward of it
 * @param steep on a wall rows have no port and starboard but count along the height
 */
public record VoiceGrid(Envelope extent, double originX, boolean steep, boolean highIsPlusY) {
    public static final double STEP = 500;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /** A column or row with the survey's limits of its visible part. */
    public record Strip(String name, double from, double to) {
        /** Where there is little room: {@code stbd 2}. */
        public String shortName() {
            return name.replace("starboard", "stbd");
        }
    }

    public static VoiceGrid of(Face face) {
        return of(face, face.outline().getEnvelopeInternal());
    }

    /** The same letters and rows over a part of the face. */
    public static VoiceGrid of(Face face, Envelope shown) {
        double foremost = face.outline().getEnvelopeInternal().getMinX();
        double originX = foremost > -1 ? 0 : STEP * Math.floor(foremost / STEP);
        return new VoiceGrid(shown, originX, face.wall(), face.risesWithY());
    }

    private static String letters(int index) {
        int n = LETTERS.length();
        String last = String.valueOf(LETTERS.charAt(index % n));
        return index < n ? last : letters(index / n - 1) + last;
    }

    public List<Strip> columns() {
        List<Strip> columns = new ArrayList<>();
        double origin = originX;
        for (int i = (int) Math.floor((extent.getMinX() - origin) / STEP); ; i++) {
            double from = Math.max(extent.getMinX(), origin + i * STEP);
            double to = Math.min(extent.getMaxX(), origin + (i + 1) * STEP);
            if (from >= extent.getMaxX()) {
                return columns;
            }
            if (to > from) {
                columns.add(new Strip(letters(Math.max(i, 0)), from, to));
            }
        }
    }

    public List<Strip> rows() {
        List<Strip> rows = new ArrayList<>();
        int first = (int) Math.floor(extent.getMinY() / STEP);
        for (int i = first; i * STEP < extent.getMaxY(); i++) {
            double from = Math.max(extent.getMinY(), i * STEP);
            double to = Math.min(extent.getMaxY(), (i + 1) * STEP);
            if (to > from) {
                rows.add(new Strip(side(i >= 0) + " " + (i >= 0 ? i + 1 : -i), from, to));
            }
        }
        return rows;
    }

    /** Where the whole column begins, survey millimetres aft. */
    public double columnStart(Strip column) {
        return STEP * Math.floor((column.from() - originX) / STEP + 1e-9) + originX;
    }

    /** Where the whole row begins, counted out from the centreline. */
    public double rowStart(Strip row) {
        int number = Integer.parseInt(row.name().substring(row.name().indexOf(' ') + 1));
        return STEP * (number - 1);
    }

    private String side(boolean plusY) {
        if (steep) {
            return plusY == highIsPlusY ? "up" : "down";
        }
        return plusY ? "starboard" : "port";
    }
}
