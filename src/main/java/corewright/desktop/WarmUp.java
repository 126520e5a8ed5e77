package corewright.desktop;

import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.assessment.Partial;
import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPainter;
import corewright.desktop.slip.SlipWords;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Sight;
import corewright.desktop.state.Steps;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Measure;
import corewright.drawing.placing.Lettering;
import corewright.drawing.screen.ScreenLook;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.jspecify.annotations.Nullable;

/**
 * While the toolkit starts, the other core reads the survey that is to be opened, or else the sample, and paints its plan
 * once: classes and typefaces that the first picture needs are there when it comes, and the survey is read already.
 */
final class WarmUp {
    private static final int PX = 400;

    /** The toolkit makes the application by itself and hands on nothing but words, so this is kept here. */
    private static volatile @Nullable Reading reading;

    /** A survey being read. */
    private record Reading(Path path, FutureTask<EditLog> task) {}

    private WarmUp() {}

    /** @param survey to be opened, or null for an empty window */
    static void begin(@Nullable Path survey) {
        FutureTask<EditLog> read =
                new FutureTask<>(() -> survey == null ? SurveyOpener.sample() : SurveyOpener.open(survey));
        reading = survey == null ? null : new Reading(survey, read);
        Thread thread = new Thread(() -> readAndPaint(read), "corewright-warm-up");
        thread.setDaemon(true);
        thread.start();
    }

    /** Gives what is being read already, once; whatever else is read when its turn comes. */
    static Callable<EditLog> opening(Path survey) {
        Reading begun = reading;
        reading = null;
        if (begun == null || !begun.path().equals(survey)) {
            return () -> SurveyOpener.open(survey);
        }
        return () -> {
            try {
                return begun.task().get();
            } catch (ExecutionException e) {
                throw e.getCause() instanceof Exception cause ? cause : e;
            }
        };
    }

    private static void readAndPaint(FutureTask<EditLog> read) {
        read.run();
        try {
            EditLog log = read.get();
            String face = log.survey().faces().get(0).name();
            PlanCamera camera = PlanCamera.fitting(log.survey().face(face), PX, PX);
            Assessment bare = Partial.bare(log.survey(), List.of());
            PlanPainter.Showing showing = new PlanPainter.Showing(
                    new Sight(() -> {}).layers(), ScreenLook.DAY, Lettering.onScreen(Measure.METRIC, false), "", false);
            BufferedImage painted = PlanPainter.painted(new PlanPainter.Wish(bare, face, camera, showing, 1));
            int words =
                    Steps.of(log.survey(), null, true, Ages.FRESH, Units.METRIC).size()
                            + SlipWords.of(bare, Units.METRIC, Ages.FRESH)
                                    .face(face)
                                    .facts()
                                    .size();
            assert painted.getWidth() + words > 0;
        } catch (InterruptedException | ExecutionException | RuntimeException e) {
            // whatever is wrong shows, with its reason, when it is wanted
        }
    }
}
