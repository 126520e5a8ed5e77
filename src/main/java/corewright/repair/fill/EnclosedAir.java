package corewright.repair.fill;

import java.util.ArrayList;
import java.util.List;

/** What is left of the air at the end of a fill. */
final class EnclosedAir {
    private EnclosedAir() {}

    /** Air enclosed at the end, largest first. */
    static List<Pocket> of(FillSimulation.Setting setting, FillSimulation.Result result) {
        double[] volume = new double[setting.cavity().size()];
        double[] most = new double[setting.cavity().size()];
        int[] middle = new int[setting.cavity().size()];
        int last = -1;
        for (int c : setting.cavity().cells) {
            int p = result.pocket()[c];
            double air = setting.cavity().gapMm[c]
                    * setting.cavity().cell
                    * setting.cavity().cell
                    * (1 - result.filled()[c]);
            if (p < 0 || air <= 0 || setting.cavity().open[c] == 0) {
                continue;
            }
            last = Math.max(last, p);
            volume[p] += air;
            if (air > most[p]) {
                most[p] = air;
                middle[p] = c;
            }
        }
        List<Pocket> pockets = new ArrayList<>();
        for (int p = 0; p <= last; p++) {
            if (volume[p] > 0) {
                pockets.add(new Pocket(middle[p], volume[p]));
            }
        }
        pockets.sort((a, b) -> Double.compare(b.mm3, a.mm3));
        return pockets;
    }

    /** Enclosed air and the cell that holds most of it. */
    record Pocket(int cell, double mm3) {}
}
