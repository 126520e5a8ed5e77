package corewright.desktop.plan;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Measure;
import corewright.drawing.placing.Lettering;
import corewright.drawing.screen.ScreenLayer;
import corewright.drawing.screen.ScreenLook;
import corewright.drawing.screen.ScreenMap;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Paints the plan on a thread of its own. Only the newest wish counts: what came in between is never painted. Where things
 * go is kept while only colours or the region selected change.
 */
public final class PlanPainter implements AutoCloseable {
    private static final long PATIENCE_MS = 1000;

    /**
     * What of a plan is shown, and how.
     *
     * @param selected id of the region selected, empty for none
     * @param work holes are in hand: close by, patterns leave the middle to them
     */
    public record Showing(
            Set<ScreenLayer> layers, ScreenLook look, Lettering lettering, String selected, boolean work) {
        static final Showing NOTHING =
                new Showing(Set.of(), ScreenLook.DAY, Lettering.onScreen(Measure.METRIC, false), "", false);

        public Showing {
            layers = Set.copyOf(layers);
        }
    }

    /**
     * What is to be painted.
     *
     * @param sharpness device pixels to one of the window
     */
    public record Wish(Assessment assessment, String face, PlanCamera camera, Showing showing, double sharpness) {
        boolean liesAs(Wish other) {
            return assessment == other.assessment
                    && face.equals(other.face)
                    && camera.equals(other.camera)
                    && showing.layers().equals(other.showing.layers())
                    && showing.lettering().equals(other.showing.lettering())
                    && showing.work() == other.showing.work();
        }
    }

    /** A picture of what was wished for. */
    static final class Picture {
        final Wish wish;
        final Pixels pixels;
        final double paintedMs;

        private Picture(Wish wish, BufferedImage image, double paintedMs) {
            this.wish = wish;
            this.pixels = Pixels.of(image);
            this.paintedMs = paintedMs;
        }
    }

    private final ExecutorService thread = Executors.newSingleThreadExecutor(r -> {
        Thread t = new Thread(r, "corewright-plan");
        t.setDaemon(true);
        return t;
    });
    private final AtomicReference<@Nullable Wish> newest = new AtomicReference<>();
    private final Consumer<Picture> done;
    private final Consumer<RuntimeException> failed;
    private @Nullable Wish laidOut;
    private @Nullable ScreenMap map;

    /** @param done told on the painting thread */
    PlanPainter(Consumer<Picture> done, Consumer<RuntimeException> failed) {
        this.done = done;
        this.failed = failed;
    }

    void paint(Wish wish) {
        if (newest.getAndSet(wish) == null) {
            thread.execute(this::paintNewest);
        }
    }

    private void paintNewest() {
        Wish wish = newest.getAndSet(null);
        if (wish == null) {
            return;
        }
        try {
            done.accept(picture(wish));
        } catch (RuntimeException e) {
            failed.accept(e);
        }
    }

    private Picture picture(Wish wish) {
        long from = System.nanoTime();
        ScreenMap placed = map;
        if (placed == null || laidOut == null || !laidOut.liesAs(wish)) {
            placed = layOut(wish);
            map = placed;
            laidOut = wish;
        }
        BufferedImage image = painted(placed, wish);
        return new Picture(wish, image, (System.nanoTime() - from) / 1e6);
    }

    /** Lays out and paints here and now. */
    public static BufferedImage painted(Wish wish) {
        return painted(layOut(wish), wish);
    }

    private static ScreenMap layOut(Wish wish) {
        return ScreenMap.layOut(
                wish.assessment(),
                new ScreenMap.Seen(
                        wish.face(),
                        wish.camera().box(),
                        wish.camera().view(),
                        wish.showing().layers(),
                        wish.showing().lettering(),
                        wish.showing().work()));
    }

    private static BufferedImage painted(ScreenMap placed, Wish wish) {
        BufferedImage image = new BufferedImage(
                Math.max(1, (int) Math.ceil(wish.camera().widthPx() * wish.sharpness())),
                Math.max(1, (int) Math.ceil(wish.camera().heightPx() * wish.sharpness())),
                BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.scale(wish.sharpness(), wish.sharpness());
        placed.paint(g, wish.showing().look(), wish.showing().selected());
        g.dispose();
        return image;
    }

    /** Waits until what was wished for before is painted, a second at most. */
    void await() throws InterruptedException {
        try {
            thread.submit(() -> {}).get(PATIENCE_MS, TimeUnit.MILLISECONDS);
        } catch (ExecutionException | RejectedExecutionException | TimeoutException e) {
            // whoever waits may go on: the picture takes long, or nobody wants it any more
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
