package corewright.bench;

import java.io.IOException;
import java.nio.file.Path;

/** What is really under a deck, on one raster: wet and loose 0 or 1, void depth in millimetres. */
public record Truth(TruthGrid wet, TruthGrid loose, TruthGrid depth) {
    public static Truth read(Path folder) throws IOException {
        return new Truth(
                TruthGrid.read(folder.resolve("truth-wet.asc")),
                TruthGrid.read(folder.resolve("truth-delaminated.asc")),
                TruthGrid.read(folder.resolve("truth-void-depth-mm.asc")));
    }

    public boolean wetAt(int i) {
        return wet.at(i) > 0.5;
    }

    public boolean looseAt(int i) {
        return loose.at(i) > 0.5 || emptyAt(i);
    }

    public boolean emptyAt(int i) {
        return depth.at(i) > 0.5;
    }

    /** Square metres wet or loose. */
    double damagedM2() {
        double sum = 0;
        for (int i = 0; i < wet.size(); i++) {
            sum += wet.onDeck(i) && (wetAt(i) || looseAt(i)) ? wet.cell * wet.cell / 1e6 : 0;
        }
        return sum;
    }

    double litres() {
        double sum = 0;
        for (int i = 0; i < depth.size(); i++) {
            sum += depth.onDeck(i) ? depth.at(i) * depth.cell * depth.cell / 1e6 : 0;
        }
        return sum;
    }
}
