package corewright.decision.drying;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A body of core that dries from one surface: the share of its removable water that is left, in dimensionless time {@code D t /
 * l^2}. The body is wet evenly at first; the air holds its surface at the equilibrium, through a resistance of the surface: {@code
 * L = l a / D}, where {@code a} is the surface's coefficient; an infinite L is no resistance (J. Crank, The Mathematics of
 * Diffusion, 2nd ed. 1975, ch. 4 and 5).
 *
 * <p>Every one is a sum of {@code c exp(-b^2 T)} over the roots b of the surface's condition; roots are found as they are needed.
 */
public abstract class Body {
    /** Terms below this share are left out. */
    private static final double EXPONENT = 30;

    private static final int MOST_TERMS = 4000;

    private final List<Term> terms = new ArrayList<>();

    /**
     * One term.
     *
     * @param root b
     * @param mean its coefficient in the mean
     * @param last its coefficient at the place that dries last
     */
    record Term(double root, double mean, double last) {}

    /** The n-th term, counted from 0. */
    abstract Term term(int n);

    /** Share left, mean of the body. */
    public final double mean(double time) {
        return time <= 0 ? 1 : sum(time, true);
    }

    /** Share left where it dries last. */
    public final double last(double time) {
        return time <= 0 ? 1 : sum(time, false);
    }

    private double sum(double time, boolean mean) {
        double sum = 0;
        for (int n = 0; n < MOST_TERMS; n++) {
            if (n == terms.size()) {
                terms.add(term(n));
            }
            Term term = terms.get(n);
            double exponent = term.root * term.root * time;
            if (exponent > EXPONENT) {
                break;
            }
            sum += (mean ? term.mean : term.last) * Math.exp(-exponent);
        }
        return sum;
    }

    /** When the share left where it dries last comes down to this; 0 for 1 and more, infinite for 0 and less. */
    public final double timeTo(double share) {
        if (share >= 1 || share <= 0) {
            return share >= 1 ? 0 : Double.POSITIVE_INFINITY;
        }
        return timeTo(this::last, share, rate());
    }

    /** The slowest rate at which it dries. */
    final double rate() {
        if (terms.isEmpty()) {
            terms.add(term(0));
        }
        return terms.get(0).root * terms.get(0).root;
    }

    /** By halving, of a share that falls with time. */
    static double timeTo(DoubleUnaryOperator left, double share, double rate) {
        double high = (Math.log(1 / share) + 1) / rate;
        while (left.applyAsDouble(high) > share) {
            high *= 2;
        }
        double low = 0;
        while (high - low > 1e-7 * high) {
            double middle = (low + high) / 2;
            if (left.applyAsDouble(middle) > share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** A root between two places where a function changes its sign (C. Ridders, IEEE Transactions on Circuits and Systems 26, 1979). */
    static double root(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        double atLow = f.applyAsDouble(low);
        double atHigh = f.applyAsDouble(high);
        double root = high;
        for (int i = 0; i < 100 && high - low > 1e-14 * high; i++) {
            double middle = (low + high) / 2;
            double atMiddle = f.applyAsDouble(middle);
            double last = root;
            double scale = Math.sqrt(atMiddle * atMiddle - atLow * atHigh);
            root = atMiddle == 0 ? middle : middle + (middle - low) * Math.signum(atLow) * atMiddle / scale;
            double at = f.applyAsDouble(root);
            if (at == 0 || Math.abs(root - last) <= 1e-14 * root) {
                break;
            }
            if (atMiddle > 0 == atLow > 0) {
                low = middle;
                atLow = atMiddle;
            } else {
                high = middle;
                atHigh = atMiddle;
            }
            if (at > 0 == atLow > 0) {
                low = root;
                atLow = at;
            } else {
                high = root;
                atHigh = at;
            }
        }
        return root;
    }

    /** The first root beyond a place, by steps smaller than any two roots lie apart. */
    static double next(DoubleUnaryOperator f, double from, double step) {
        double low = from;
        double atLow = f.applyAsDouble(low);
        while (true) {
            double high = low + step;
            double at = f.applyAsDouble(high);
            if (at > 0 != atLow > 0) {
                return root(f, low, high);
            }
            low = high;
            atLow = at;
        }
    }
}
