package corewright.decision;

import corewright.survey.Face;
import corewright.survey.RuleOverride;
import corewright.survey.Spot;
import java.util.List;
import java.util.Locale;

/** Places, areas and lists as people say them. */
final class Words {
    private Words() {}

    /** {@code 2.25 m aft, 0.60 m to starboard}, from the survey's datum; on a wall up or down. */
    static String place(Face face, Spot spot) {
        boolean plus = spot.yMm() >= 0;
        String side = !face.wall() ? plus ? " to starboard" : " to port" : plus == face.risesWithY() ? " up" : " down";
        return metres(spot.xMm()) + (spot.xMm() < 0 ? " forward, " : " aft, ") + metres(spot.yMm()) + side;
    }

    private static String metres(double mm) {
        return String.format(Locale.ROOT, "%.2f m", Math.abs(mm) / 1000);
    }

    static String squareMetres(double mm2) {
        return String.format(Locale.ROOT, "%.2f m²", mm2 / 1e6);
    }

    /** {@code 15} or {@code 15.5}: no more digits than a person noted. */
    public static String plain(double value) {
        return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
    }

    /** {@code A. Smith: because.} */
    static String whoAndWhy(RuleOverride by) {
        return by.who() + ": " + by.reason().replaceAll("\\.$", "") + ".";
    }

    static String list(List<String> items) {
        int n = items.size();
        return n < 2 ? String.join("", items) : String.join(", ", items.subList(0, n - 1)) + " and " + items.get(n - 1);
    }
}
