package corewright.drawing.kit;

import corewright.survey.Face;

/** From where one looks at a plan of ours, and what lies where. */
public final class Orientation {
    private Orientation() {}

    /** As it stands on every sheet: "seen from below, bow to the left, port at the top". */
    public static String of(Face face) {
        if (face.wall()) {
            return "seen square on, bow to the left, high side at the top";
        }
        if (face.tiltDeg() > 90) {
            return "seen from below, bow to the left, port at the top";
        }
        if (face.tiltDeg() < 45) {
            return "seen from above, bow to the left, starboard at the top";
        }
        boolean left = Math.cos(Math.toRadians(face.uphillDeg())) < 0;
        return "seen square on, bow to the left, high side to the " + (left ? "left" : "right");
    }

    /** The same of a plan with the bow up: "seen from below, bow up, port at the right". */
    public static String bowUp(Face face) {
        if (face.wall()) {
            return "seen square on, bow up, high side at the right";
        }
        return face.plusYPointsDown()
                ? "seen from below, bow up, port at the right"
                : "seen from above, bow up, starboard at the right";
    }
}
