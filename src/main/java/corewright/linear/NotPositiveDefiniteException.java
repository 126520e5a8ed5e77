package corewright.linear;

import java.util.Locale;

/** A pivot of the factorisation was not positive: something is free to move, or a stiffness is negative. */
public final class NotPositiveDefiniteException extends ArithmeticException {
    private static final long serialVersionUID = 1L;

    NotPositiveDefiniteException(double pivot) {
        super(String.format(
                Locale.ROOT,
                "the matrix is not positive definite (pivot %g): something is not held or not joined",
                pivot));
    }
}
