package corewright.desktop.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.drawing.kit.PlanView;
import org.junit.jupiter.api.Test;

class PlanCameraTest {
    /** Rounding of a few sums and quotients of numbers up to some thousands. */
    private static final double ROUNDING = 1e-9;

    private final PlanCamera camera = new PlanCamera(new PlanView(20, 12, 70), 1040, 740);

    @Test
    void aPlaceComesBackFromItsPixel() {
        assertThat(camera.xMm(camera.px(2250))).isCloseTo(2250, within(ROUNDING));
        assertThat(camera.yMm(camera.py(-600))).isCloseTo(-600, within(ROUNDING));
    }

    @Test
    void zoomingLeavesThePlaceUnderTheHandWhereItIs() {
        double x = camera.xMm(300);
        double y = camera.yMm(200);

        PlanCamera closer = camera.zoomed(1.5, 300, 200);

        assertThat(closer.px(x)).isCloseTo(300, within(ROUNDING));
        assertThat(closer.py(y)).isCloseTo(200, within(ROUNDING));
        assertThat(closer.mmPerPx()).isCloseTo(camera.mmPerPx() / 1.5, within(ROUNDING));
    }

    @Test
    void starboardIsAtTheTopAndAftAtTheRight() {
        assertThat(camera.px(100)).isGreaterThan(camera.px(0));
        assertThat(camera.py(100)).isLessThan(camera.py(0));
    }

    @Test
    void aPlaceFoundStandsInTheMiddle() {
        PlanCamera there = camera.centredOn(1500, 300);

        assertThat(there.px(1500)).isCloseTo(520, within(ROUNDING));
        assertThat(there.py(300)).isCloseTo(370, within(ROUNDING));
    }

    @Test
    void anotherWindowKeepsTheMiddle() {
        PlanCamera larger = camera.sized(1440, 900);

        assertThat(larger.xMm(720)).isCloseTo(camera.xMm(520), within(ROUNDING));
        assertThat(larger.yMm(450)).isCloseTo(camera.yMm(370), within(ROUNDING));
    }
}
