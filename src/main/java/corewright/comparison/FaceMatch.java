package corewright.comparison;

import corewright.damage.FaceDamage;
import corewright.overlay.Overlay;
import corewright.survey.Face;
import corewright.survey.Feature;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Whether a face of one survey is, place by place, the face of the same name of the other. */
final class FaceMatch {
    /** What a tape on a deck is good for, twice: two outlines drawn by the same rule lie within this of each other. */
    private static final double SAME_MM = 20;

    /** Share of the core that may differ before it is told. */
    private static final double CORE_SHARE = 0.01;

    private FaceMatch() {}

    /** Why places of the two cannot be told apart by their coordinates; empty where they can. */
    static String whyNot(Face before, Face after) {
        if (within(before.outline(), after.outline())) {
            return before.plusYPointsDown() == after.plusYPointsDown()
                    ? ""
                    : "It is seen from above in one survey and from below in the other: which side is which is not known.";
        }
        Coordinate from = before.outline().getCentroid().getCoordinate();
        Coordinate to = after.outline().getCentroid().getCoordinate();
        double aft = to.x - from.x;
        double side = to.y - from.y;
        Geometry moved = AffineTransformation.translationInstance(-aft, -side).transform(after.outline());
        if (within(before.outline(), moved)) {
            return String.format(
                    Locale.ROOT,
                    "Its datum has moved: the same outline lies %.0f mm along and %.0f mm across from where it was.",
                    aft,
                    side);
        }
        return "Its outline is not the same in both surveys.";
    }

    private static boolean within(Geometry one, Geometry other) {
        return one.buffer(SAME_MM).covers(other) && other.buffer(SAME_MM).covers(one);
    }

    /** What differs of a face that can be compared all the same, a sentence each. */
    static List<String> notes(FaceDamage before, FaceDamage after) {
        List<String> notes = new ArrayList<>();
        Geometry was = core(before.face());
        Geometry is = core(after.face());
        double apart = Overlay.difference(was, is).getArea()
                + Overlay.difference(is, was).getArea();
        if (apart > CORE_SHARE * was.getArea()) {
            notes.add(
                    "Openings or solid areas were drawn otherwise in the two surveys; areas count what each calls core.");
        }
        if (!before.face().laminate().equals(after.face().laminate())) {
            notes.add("The two surveys name different laminates.");
        }
        return notes;
    }

    private static Geometry core(Face face) {
        Geometry core = face.outline();
        for (Feature feature : face.features()) {
            if (feature instanceof Feature.Opening || feature instanceof Feature.Solid) {
                core = Overlay.difference(core, feature.geometry());
            }
        }
        return core;
    }
}
