package corewright.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DrawsTest {
    /** Two independent nodes, standard deviations 1 and 2, and a certain one; 20 000 draws, so a spread within 2 %. */
    @Test
    void movedTogetherKnownPlacesStayKnownAndTheOthersGoAlongWithEachOther() {
        Random random = new Random(4);
        double[][] values = new double[20_000][];
        Arrays.setAll(values, d -> new double[] {random.nextGaussian(), 5 + 2 * random.nextGaussian(), 3});

        Draws moved = new Draws(3, values).together(0.5, random);

        double[] a = IntStream.range(0, 20_000).mapToDouble(d -> moved.at(d, 0)).toArray();
        double[] b =
                IntStream.range(0, 20_000).mapToDouble(d -> moved.at(d, 1) - 5).toArray();
        assertThat(mean(a, a)).isCloseTo(1 + 0.25, within(0.05));
        assertThat(mean(b, b)).isCloseTo(4 * 1.25, within(0.2));
        assertThat(mean(a, b)).isCloseTo(0.25 * 2, within(0.05));
        assertThat(Arrays.stream(a).average().orElseThrow()).isCloseTo(0, within(0.03));
        assertThat(moved.at(7, 2)).isCloseTo(3, within(1e-12));
    }

    private static double mean(double[] a, double[] b) {
        return IntStream.range(0, a.length)
                .mapToDouble(i -> a[i] * b[i])
                .average()
                .orElseThrow();
    }
}
