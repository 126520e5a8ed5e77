package corewright.desktop.decide;

/**
 * A chance as counted cases, which people weigh better than a share.
 *
 * @param hit of them; none where it is less than one
 */
record Cases(int hit, int of) {
    private static final int FEW = 10;
    private static final int MOST = 20;

    /** Above this tenths are fine enough; below it one case in so many. */
    private static final double TENTHS_FROM = 0.15;

    static Cases of(double probability) {
        if (probability < 1.0 / MOST) {
            return new Cases(0, MOST);
        }
        return probability < TENTHS_FROM
                ? new Cases(1, (int) Math.round(1 / probability))
                : new Cases((int) Math.round(FEW * probability), FEW);
    }

    /** "1 case in 9". */
    String words() {
        return hit == 0 ? "less than 1 case in " + of : hit + (hit == 1 ? " case in " : " cases in ") + of;
    }
}
