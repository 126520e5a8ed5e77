package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.drawing.ScreenLook;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;

/**
 * While the toolkit starts, the other core reads the sample survey and paints its plan once: nothing is kept of it, but the
 * classes and typefaces that the first survey needs are there when it comes.
 */
final class WarmUp {
    private static final int PX = 400;

    private WarmUp() {}

    static void begin() {
        Thread thread = new Thread(WarmUp::readAndPaint, "corewright-warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    private static void readAndPaint() {
        try (EditLog log = SurveyOpener.sample()) {
            String face = log.survey().faces().get(0).name();
            PlanCamera camera = PlanCamera.fitting(log.survey().face(face), PX, PX);
            Assessment bare = Bare.of(log.survey(), List.of());
            BufferedImage painted = PlanPainter.painted(
                    new PlanPainter.Wish(bare, face, camera, new Sight(() -> {}).layers(), ScreenLook.DAY, "", 1));
            int words = Steps.of(log.survey(), null, Freshness.NONE, Units.METRIC)
                            .size()
                    + SlipWords.of(bare, Units.METRIC, true).face(face).facts().size();
            assert painted.getWidth() + words > 0;
        } catch (IOException | RuntimeException e) {
            // whatever is wrong shows, with its reason, when it is wanted
        }
    }
}
