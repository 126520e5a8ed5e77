package corewright.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.contour.Raster;
import org.junit.jupiter.api.Test;

class SurfacesTest {
    /** By hand, a patch as large as a cell, half of the face loose: (1.5 + 0.5) / (2 + 1) over (0.5 + 0.5) / (2 + 1). */
    @Test
    void aSkinIsLooseTwiceAsOftenOverWetCore() {
        Surfaces both = surfaces(new double[] {1, 1, 0, 0, Double.NaN}, new double[] {1, 0.5, 0, 0.5, Double.NaN});
        assertThat(both.looseIfWetOverDry(1e6)).isCloseTo(2, within(1e-12));
        Surfaces nothingLoose = surfaces(new double[] {1, 0, 0, 0, 0}, new double[5]);
        assertThat(nothingLoose.looseIfWetOverDry(1e6)).isEqualTo(1);
    }

    private static Surfaces surfaces(double[] wet, double[] loose) {
        Raster none = raster(new double[wet.length]);
        return new Surfaces(none, none, raster(wet), raster(loose), none, none, none);
    }

    private static Raster raster(double[] values) {
        return new Raster(0, 0, 1000, 1, values.length, values);
    }
}
