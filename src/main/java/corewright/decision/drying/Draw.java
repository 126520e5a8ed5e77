package corewright.decision.drying;

import java.util.ArrayList;
import java.util.List;

/**
 * One of many equally likely cases: four places from 0 to 1, spread evenly (Halton, Numer. Math. 2 (1960) 84), the same every time.
 *
 * @param diffusion between its low and high
 * @param surface between its low and high
 * @param start of the moisture it starts from
 * @param air of what the air holds it at
 */
record Draw(double diffusion, double surface, double start, double air) {
    private static final int DRAWS = 200;

    static List<Draw> all() {
        List<Draw> draws = new ArrayList<>();
        for (int i = 1; i <= DRAWS; i++) {
            draws.add(new Draw(halton(i, 2), halton(i, 3), halton(i, 5), halton(i, 7)));
        }
        return draws;
    }

    private static double halton(int index, int base) {
        double place = 0;
        double share = 1;
        for (int i = index; i > 0; i /= base) {
            share /= base;
            place += share * (i % base);
        }
        return place;
    }

    /** Evenly spread in the logarithm, one in ten below low and one in ten above high. */
    static double spread(double low, double high, double place) {
        return low * Math.pow(high / low, (place - 0.1) / 0.8);
    }
}
