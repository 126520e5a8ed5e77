package corewright.sandwich;

import corewright.sandwich.FootLoadMap.Place;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * How alike feet on and about one loose area are, as far as the skins' pull goes, and from this the ratio it makes for a foot
 * between others. The pull follows how far the foot sinks by the linear theory and how much of it stands on the loose skin
 * rather than where that is, and how much contact took of it before the pull: beside a step from a shallow gap to a deep one
 * feet sink alike by the linear theory, but one rests and the other hangs. So feet are points (ln linear, share on the area, x, y,
 * ln of contact over linear), each measured in the step that changes the ratio about as much as the others' (steps found by trial
 * on rectangles and ellipses).
 *
 * <p>A ratio is a mean of those known, weighted by the inverse fourth power of the distance, of planes in the first two
 * (D. Shepard, A two-dimensional interpolation function for irregularly-spaced data, Proc. 23rd ACM conference, 1968).
 */
final class FootLikeness {
    private static final double LOG_STEP = 0.3;
    private static final double SHARE_STEP = 0.3;
    private static final double PLACE_STEP_MM = 250;

    /** Keeps a plane through few or like feet from tilting: part of the weights' sum. */
    private static final double STIFF = 0.1;

    /** Feature by foot: the two that planes tilt in first. */
    private final double[][] features;

    /**
     * @param area the cells of the area
     * @param places of the feet
     */
    FootLikeness(List<Foot> feet, int[] area, Place[] places) {
        BitSet own = new BitSet();
        Arrays.stream(area).forEach(own::set);
        features = new double[places.length][];
        for (int k = 0; k < places.length; k++) {
            Place p = places[k];
            features[k] = new double[] {
                Math.log(Math.max(p.linearMm(), 1e-9)) / LOG_STEP,
                share(feet.get(k), own) / SHARE_STEP,
                p.x() / PLACE_STEP_MM,
                p.y() / PLACE_STEP_MM,
                Math.log(Math.max(p.deflectionMm(), 1e-9) / Math.max(p.linearMm(), 1e-9)) / LOG_STEP
            };
        }
    }

    private static double share(Foot foot, BitSet own) {
        double on = 0;
        double all = 0;
        for (LoadVector.Spot spot : foot.spots()) {
            all += spot.weight();
            on += own.get(spot.cell()) ? spot.weight() : 0;
        }
        return on / all;
    }

    private double squared(int a, int b) {
        double sum = 0;
        for (int f = 0; f < features[a].length; f++) {
            double d = features[a][f] - features[b][f];
            sum += d * d;
        }
        return sum;
    }

    /** The feet, each time the one least like those taken before; the given one first. */
    int[] leastAlikeFirst(int[] feet, int first) {
        int[] order = new int[feet.length];
        double[] apart = new double[feet.length];
        Arrays.fill(apart, Double.POSITIVE_INFINITY);
        int next = first;
        for (int at = 0; at < order.length; at++) {
            order[at] = next;
            int farthest = 0;
            for (int i = 0; i < feet.length; i++) {
                apart[i] = feet[i] == next ? -1 : Math.min(apart[i], squared(feet[i], next));
                farthest = apart[i] > apart[farthest] ? i : farthest;
            }
            next = feet[farthest];
        }
        return order;
    }

    /** The feet among those known that are most like one, most first; so many at most. */
    List<Integer> mostAlike(int foot, List<Integer> known, int many) {
        return known.stream()
                .sorted(Comparator.comparingDouble(k -> squared(foot, k)))
                .limit(many)
                .toList();
    }

    /** The ratio of a foot from those known. */
    double between(int foot, List<Integer> known, double[] ratio) {
        double[] m = new double[9];
        double[] b = new double[3];
        for (int i : known) {
            double weight = Math.pow(squared(foot, i) + 1e-6, -2);
            double[] row = {1, features[i][0] - features[foot][0], features[i][1] - features[foot][1]};
            for (int r = 0; r < 3; r++) {
                b[r] += weight * row[r] * ratio[i];
                for (int c = 0; c < 3; c++) {
                    m[3 * r + c] += weight * row[r] * row[c];
                }
            }
        }
        double keep = STIFF * m[0];
        double a11 = m[4] + keep;
        double a22 = m[8] + keep;
        double det = a11 * a22 - m[5] * m[5];
        // eliminate the slopes: what is left is the plane's height at the foot
        double sx = (a22 * m[1] - m[5] * m[2]) / det;
        double sy = (a11 * m[2] - m[5] * m[1]) / det;
        return (b[0] - sx * b[1] - sy * b[2]) / (m[0] - sx * m[1] - sy * m[2]);
    }
}
