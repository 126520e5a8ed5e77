package corewright.desktop;

import corewright.Assessments;
import corewright.SurveyFolders;
import corewright.assessment.Assessed;
import corewright.assessment.Partial;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.state.Chain;
import corewright.desktop.state.Recent;
import corewright.desktop.state.Workbench;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.prefs.Preferences;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javax.imageio.ImageIO;

/** A real window without a screen, and hands to use it. */
final class OpenWindow implements AutoCloseable {
    private static final int TRIES = 10;

    private static final long PATIENCE_MS = Long.getLong("patience.ms", 240_000);

    static {
        WindowToolkit.begin();
    }

    final Hand hand;
    final Desk desk;

    /** Files handed to the system's viewer. */
    final List<Path> opened = new java.util.concurrent.CopyOnWriteArrayList<>();

    private final Stage stage;
    private final FxJobs jobs = new FxJobs();
    private final Preferences preferences = Preferences.userRoot()
            .node("corewright-test-" + ProcessHandle.current().pid());

    /** With the minimal survey, of which nothing is calculated. */
    static OpenWindow bare(Path folder) {
        Chain chain = (survey, findings, earlier, progress) ->
                new Assessed(Assessments.fresh(Partial.bare(survey, findings)), earlier);
        OpenWindow window = new OpenWindow(chain, Optional.empty());
        doFx(() -> window.desk.open(SurveyFolders.minimal(folder).path()));
        window.waitUntilCalculated();
        return window;
    }

    OpenWindow(Chain chain, Optional<Path> chosen) {
        this(chain, new NoChooser(chosen));
    }

    OpenWindow(Chain chain, Chooser chooser) {
        stage = onFx(Stage::new);
        hand = new Hand(stage);
        desk = onFx(() -> {
            Desk made = new Desk(new Workbench(jobs, chain), chooser, new Recent(() -> preferences), opened::add);
            stage.setScene(made.scene());
            stage.setWidth(1440);
            stage.setHeight(900);
            stage.show();
            return made;
        });
    }

    static <T> T onFx(Callable<T> deed) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                answer.complete(deed.call());
            } catch (Exception | Error e) {
                answer.completeExceptionally(e);
            }
        });
        return answer.orTimeout(PATIENCE_MS, TimeUnit.MILLISECONDS).join();
    }

    static void doFx(Runnable deed) {
        onFx(() -> {
            deed.run();
            return true;
        });
    }

    void waitFor(String what, BooleanSupplier there) {
        long until = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (!onFx(there::getAsBoolean)) {
            if (System.nanoTime() > until) {
                throw new AssertionError("waited in vain for " + what + "; the window says: "
                        + onFx(() -> desk.bench().message()));
            }
            try {
                Thread.sleep(30);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** The first node of this kind that is shown, waited for. */
    <T extends Node> T shown(String selector, Class<T> kind, Predicate<T> right) {
        return with(selector, kind, right, n -> n);
    }

    /**
     * Looks for the first node of this kind that is shown and uses it in the same turn of the window's thread, before that can
     * make its rows anew.
     */
    private <T extends Node, R> R with(String selector, Class<T> kind, Predicate<T> right, Function<T, R> use) {
        List<R> used = new ArrayList<>();
        waitFor(selector, () -> {
            Parent root = stage.getScene().getRoot();
            root.applyCss();
            root.layout();
            for (Node node : root.lookupAll(selector)) {
                if (kind.isInstance(node) && isShown(node) && right.test(kind.cast(node))) {
                    used.add(use.apply(kind.cast(node)));
                    break;
                }
            }
            return !used.isEmpty();
        });
        return used.get(0);
    }

    private static boolean isShown(Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (!n.isVisible()) {
                return false;
            }
        }
        Bounds bounds = node.localToScene(node.getBoundsInLocal());
        return !node.isDisabled() && bounds.getWidth() > 0 && bounds.getHeight() > 0;
    }

    /** A click on the control of this name, once it is there to be seen. */
    Hand click(String selector) {
        return click(selector, Node.class, n -> true);
    }

    <T extends Node> Hand click(String selector, Class<T> kind, Predicate<T> right) {
        Point2D at = with(selector, kind, right, OpenWindow::inSight);
        for (int tries = 0; tries < TRIES; tries++) {
            hand.move(at);
            Point2D still = with(selector, kind, right, OpenWindow::inSight);
            if (still.equals(at)) {
                break;
            }
            at = still; // rows were made anew on the way
        }
        return hand.clickOn(at);
    }

    <T extends Node> Hand doubleClick(String selector, Class<T> kind, Predicate<T> right) {
        return hand.doubleClickOn(with(selector, kind, right, OpenWindow::inSight));
    }

    /** A click on a place of the plan, once that is painted. */
    void touch(double xMm, double yMm) {
        waitFor("the plan", () -> desk.view().plan().settled());
        hand.clickOn(onScreen(xMm, yMm));
    }

    Point2D onScreen(double xMm, double yMm) {
        PlanPane plan = desk.view().plan();
        return onFx(
                () -> plan.localToScreen(plan.camera().px(xMm), plan.camera().py(yMm)));
    }

    /** Instead of what stands in a field, with Enter. */
    void overwrite(String field, String text) {
        fill(field, text).type(KeyCode.ENTER);
    }

    /** Instead of what stands in a field. */
    Hand fill(String field, String text) {
        with(field, TextField.class, f -> true, f -> {
            scrollTo(f);
            f.requestFocus();
            f.selectAll();
            return f;
        });
        return hand.write(text);
    }

    /** The option of this number in a list to choose from. */
    void choose(String box, int option) {
        chooseBy(box, b -> option);
    }

    /** The option of these words. */
    void choose(String box, String option) {
        chooseBy(box, b -> List.copyOf(b.getItems()).indexOf(option));
    }

    private void chooseBy(String box, ToIntFunction<ComboBox<?>> option) {
        with(box, ComboBox.class, b -> true, b -> {
            b.getSelectionModel().select(option.applyAsInt(b));
            return b;
        });
    }

    private static Point2D inSight(Node node) {
        scrollTo(node);
        Bounds bounds = node.localToScreen(node.getBoundsInLocal());
        return new Point2D(bounds.getCenterX(), bounds.getCenterY());
    }

    /** Into sight, as a hand would scroll the slip. */
    private static void scrollTo(Node node) {
        for (Node n = node.getParent(); n != null; n = n.getParent()) {
            if (n instanceof ScrollPane pane && pane.getContent() != null) {
                Bounds all = pane.getContent().getBoundsInLocal();
                Bounds own = pane.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
                double more = all.getHeight() - pane.getViewportBounds().getHeight();
                double middle = own.getCenterY() - pane.getViewportBounds().getHeight() / 2;
                pane.setVvalue(more <= 0 ? 0 : Math.max(0, Math.min(1, middle / more)));
                pane.layout();
            }
        }
    }

    /** Until everything is calculated and the plan is painted. */
    void waitUntilCalculated() {
        waitFor("the calculation", () -> desk.bench().fresh());
        waitFor(
                "the plan and its legend",
                () -> desk.view().plan().settled() && desk.view().legend().settled());
    }

    void resize(int width, int height) {
        doFx(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        waitFor(
                "the new size",
                () -> stage.getScene().getWidth() == width && stage.getScene().getHeight() == height);
    }

    BufferedImage picture() {
        return onFx(() -> {
            WritableImage image = stage.getScene().snapshot(null);
            int w = (int) image.getWidth();
            int h = (int) image.getHeight();
            int[] pixels = new int[w * h];
            image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels, 0, w);
            BufferedImage copy = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
            copy.setRGB(0, 0, w, h, pixels, 0, w);
            return copy;
        });
    }

    void write(Path file) {
        try {
            Path folder = file.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            ImageIO.write(picture(), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        doFx(() -> {
            desk.stop();
            stage.hide();
        });
        jobs.close();
        try {
            preferences.removeNode();
        } catch (java.util.prefs.BackingStoreException e) {
            throw new IllegalStateException(e);
        }
    }
}
