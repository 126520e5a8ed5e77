package corewright.desktop;

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
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.prefs.Preferences;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;
import org.testfx.api.FxRobotInterface;
import org.testfx.api.FxToolkit;

/** A real window without a screen, and hands to use it. */
final class OpenWindow implements AutoCloseable {
    private static final long PATIENCE_MS = Long.getLong("patience.ms", 240_000);

    final FxRobot hand = new FxRobot();
    final Desk desk;

    /** Files handed to the system's viewer. */
    final List<Path> opened = new java.util.concurrent.CopyOnWriteArrayList<>();

    private final Stage stage;
    private final FxJobs jobs = new FxJobs();
    private final Preferences preferences = Preferences.userRoot()
            .node("corewright-test-" + ProcessHandle.current().pid());

    OpenWindow(Chain chain, Optional<Path> chosen) {
        this(chain, new NoChooser(chosen));
    }

    OpenWindow(Chain chain, Chooser chooser) {
        try {
            stage = FxToolkit.registerPrimaryStage();
        } catch (TimeoutException e) {
            throw new IllegalStateException(e);
        }
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

    /** The first node of this kind that is shown, waited for; looked up by the thread that makes and moves nodes. */
    <T extends Node> T shown(String selector, Class<T> kind, Predicate<T> right) {
        List<T> found = new ArrayList<>();
        waitFor(selector, () -> {
            Parent root = stage.getScene().getRoot();
            root.applyCss();
            root.layout();
            for (Node node : root.lookupAll(selector)) {
                if (kind.isInstance(node) && isShown(node) && right.test(kind.cast(node))) {
                    found.add(kind.cast(node));
                }
            }
            return !found.isEmpty();
        });
        return found.get(0);
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
    FxRobotInterface click(String selector) {
        Node node = shown(selector, Node.class, n -> true);
        doFx(() -> scrollTo(node));
        return hand.clickOn(node);
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
