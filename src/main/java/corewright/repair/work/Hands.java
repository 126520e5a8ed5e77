package corewright.repair.work;

import java.util.ArrayList;
import java.util.List;

/** When one person has something to do. */
final class Hands {
    private final List<double[]> busy = new ArrayList<>();

    void take(double fromS, double toS) {
        busy.add(new double[] {fromS, toS});
    }

    /** The earliest time, not before {@code fromS}, from which they are free for so long. */
    double freeS(double fromS, double lastingS) {
        double at = fromS;
        boolean moved = true;
        while (moved) {
            moved = false;
            for (double[] b : busy) {
                if (b[0] < at + lastingS - 1e-9 && at < b[1] - 1e-9) {
                    at = b[1];
                    moved = true;
                }
            }
        }
        return at;
    }
}
