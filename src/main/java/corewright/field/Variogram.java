package corewright.field;

/**
 * A variogram model: nugget plus one structure, with at most one direction (geometric anisotropy: Isaaks and Srivastava
 * 1989, ch. 16).
 *
 * @param nugget jump at the origin, value unit squared, 0 or more
 * @param partialSill height of the structure above the nugget, value unit squared, 0 or more
 * @param range along the long axis, coordinate unit, above 0
 * @param majorDeg the long axis, degrees from +x towards +y
 * @param ratio short range over long range, above 0 and at most 1; 1 is isotropic
 */
public record Variogram(Shape shape, double nugget, double partialSill, double range, double majorDeg, double ratio) {
    public Variogram {
        require(nugget >= 0 && Double.isFinite(nugget), "nugget", nugget, "0 or more");
        require(partialSill >= 0 && Double.isFinite(partialSill), "sill", partialSill, "0 or more");
        require(range > 0 && Double.isFinite(range), "range", range, "above 0");
        require(Double.isFinite(majorDeg), "direction of the long axis", majorDeg, "a finite angle");
        require(ratio > 0 && ratio <= 1, "ratio", ratio, "above 0 and at most 1 (short over long)");
    }

    /** The same in every direction. */
    public static Variogram isotropic(Shape shape, double nugget, double partialSill, double range) {
        return new Variogram(shape, nugget, partialSill, range, 0, 1);
    }

    /** Variance of a single value: nugget and partial sill together. */
    public double sill() {
        return nugget + partialSill;
    }

    private static void require(boolean holds, String name, double value, String expected) {
        if (!holds) {
            throw new IllegalArgumentException("variogram " + name + " is " + value + ", expected " + expected);
        }
    }
}
