package corewright.field;

import java.util.List;

/**
 * A plane drawn out so that a field which reaches farther along one direction than across it reaches equally far in all
 * (geometric anisotropy: Isaaks and Srivastava 1989, chapter 16; Chiles and Delfiner 2012, section 2.5.2). Areas are kept,
 * so that a range in the plane drawn out is the geometric mean of the long and the short one.
 *
 * @param degrees direction of the long axis, from +x towards +y
 * @param ratio long range over short one; 1 for none
 */
record Stretch(double degrees, double ratio) {
    static final Stretch NONE = new Stretch(0, 1);

    /** Tried first; the finer ones only about the best of these. Core kerfs, planks and panel edges run along or across. */
    static final List<Stretch> COARSE =
            List.of(new Stretch(0, 2), new Stretch(45, 2), new Stretch(90, 2), new Stretch(135, 2));

    List<Stretch> finer() {
        return List.of(
                new Stretch(degrees - 22.5, ratio),
                new Stretch(degrees + 22.5, ratio),
                new Stretch(degrees, 2 * ratio));
    }

    /** The places in the plane drawn out, with their terms. */
    Places of(Places places) {
        return ratio == 1 ? places : places.turned(Math.toRadians(degrees), Math.sqrt(ratio));
    }
}
