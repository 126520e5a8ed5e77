package corewright.sandwich;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/**
 * The condensed calculation of feet against the full one, von Karman's strain in every cell and nothing condensed: twenty
 * random feet on each of ten random damaged panels (or as many panels as the argument says). Takes minutes. It stands beside the package's
 * tests because it asks the package's inside. Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=corewright.sandwich.CondensedBenchmark}.
 */
public final class CondensedBenchmark {
    private CondensedBenchmark() {}

    public static void main(String[] args) {
        int panels = args.length > 0 ? Integer.parseInt(args[0]) : 10;
        List<Double> errors = new ArrayList<>();
        for (int seed = 100; panels > 0; seed++) {
            FootLoadsTest.RandomPanel random = FootLoadsTest.RandomPanel.of(seed);
            PanelModel model = PanelModel.of(random.panel(), new MeshSize(50, 37));
            if (model.loose.none()) {
                continue;
            }
            panels--;
            List<Coordinate> centres = random.feet(20);
            long start = System.nanoTime();
            List<FootLoadMap.Place> places = FootLoadsTest.amongOthers(model, centres);
            double seconds = (System.nanoTime() - start) * 1e-9;
            double worst = 0;
            Theory at = Theory.LINEAR;
            for (int k = 0; k < places.size(); k++) {
                double error = places.get(k).deflectionMm() / FootLoadsTest.full(model, centres.get(k)) - 1;
                errors.add(Math.abs(error));
                if (Math.abs(error) > Math.abs(worst)) {
                    worst = error;
                    at = places.get(k).theory();
                }
            }
            System.out.printf(
                    Locale.ROOT,
                    "panel %d, %d unknowns, %d loose nodes: worst %+.2f %% (%s), %.2f s for a map every 60 mm, full %.2f s for twenty feet%n",
                    seed,
                    model.unknowns(),
                    model.loose.nodes.length,
                    100 * worst,
                    at.words(),
                    seconds,
                    (System.nanoTime() - start) * 1e-9 - seconds);
        }
        Collections.sort(errors);
        System.out.printf(
                Locale.ROOT,
                "%d feet: half within %.2f %%, nine of ten within %.2f %%, worst %.2f %%%n",
                errors.size(),
                100 * errors.get(errors.size() / 2),
                100 * errors.get(errors.size() * 9 / 10),
                100 * errors.get(errors.size() - 1));
    }
}
