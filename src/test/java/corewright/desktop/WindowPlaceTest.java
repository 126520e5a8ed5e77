package corewright.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WindowPlaceTest {
    private static WindowPlace screen(double width, double height) {
        return new WindowPlace(0, 0, width, height, false);
    }

    @Test
    void opensInTheMiddleOfALargeScreen() {
        assertThat(WindowPlace.first(screen(1920, 1080))).isEqualTo(new WindowPlace(240, 90, 1440, 900, false));
    }

    @Test
    void neverOpensLargerThanTheScreen() {
        WindowPlace small = WindowPlace.first(screen(1024, 740));

        assertThat(small).isEqualTo(new WindowPlace(0, 0, 1024, 740, true));
    }

    @Test
    void whatWasLeftOnALargerScreenComesOntoThisOne() {
        WindowPlace left = new WindowPlace(2000, -50, 1600, 1000, false);

        assertThat(left.on(screen(1366, 768))).isEqualTo(new WindowPlace(0, 0, 1366, 768, false));
        assertThat(new WindowPlace(1000, 700, 900, 520, false).on(screen(1366, 768)))
                .isEqualTo(new WindowPlace(466, 248, 900, 520, false));
    }
}
