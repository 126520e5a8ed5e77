package corewright.sandwich;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Keeps track of which rigid motions (three in the plane, three out of it) are held already. */
final class RigidBody {
    /** A row less than this part independent of the others adds nothing. */
    private static final double INDEPENDENT = 1e-6;

    private final List<double[]> basis = new ArrayList<>();

    /** Takes in one constraint, given how much each of three motions violates it; says whether it was new. */
    boolean hold(double... row) {
        double[] rest = row.clone();
        double before = norm(rest);
        for (double[] b : basis) {
            double along = rest[0] * b[0] + rest[1] * b[1] + rest[2] * b[2];
            Arrays.setAll(rest, k -> rest[k] - along * b[k]);
        }
        double length = norm(rest);
        if (basis.size() == 3 || length <= INDEPENDENT * before) {
            return false;
        }
        Arrays.setAll(rest, k -> rest[k] / length);
        basis.add(rest);
        return true;
    }

    boolean complete() {
        return basis.size() == 3;
    }

    private static double norm(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }
}
