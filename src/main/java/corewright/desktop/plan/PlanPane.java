package corewright.desktop.plan;

import corewright.assessment.Assessment;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;

/** The plan in the window: the newest picture of it, moved and stretched with the hand until the next one is painted. */
public final class PlanPane extends Region {
    /** A press that moves less is a touch, not a drag. */
    private static final double TOUCH_PX = 5;

    /** Smaller than this the window is on its way to another size. */
    private static final double LEAST_PX = 200;

    private static final double WHEEL = 1.0015;

    /** Room that an area looked at leaves to the letters over the plan, to the scale under it and to the rows beside it. */
    private static final double HEAD_PX = 28;

    private static final double FOOT_PX = 58;
    private static final double SIDE_PX = 32;

    /** Something drawn over the plan by whoever has it in hand. */
    public interface Overlay {
        void paint(GraphicsContext g, PlanCamera camera);
    }

    /** What a press on the plan does; answering true keeps the plan from moving with it. */
    public interface Hand {
        default boolean pressed(PlanCamera camera, MouseEvent event) {
            return false;
        }

        /** Only after a press that it kept, as {@link #released}. */
        default void dragged(PlanCamera camera, MouseEvent event) {}

        default void released(PlanCamera camera, MouseEvent event) {}

        /** A press that it did not keep and that moved nothing; answering true is enough done with it. */
        default boolean touched(PlanCamera camera, MouseEvent event) {
            return false;
        }
    }

    /** A place touched or pointed at. */
    public interface PlaceListener {
        void at(double xMm, double yMm);
    }

    private final Canvas canvas = new Canvas();
    private final PlanPainter painter;
    private final List<Overlay> overlays = new ArrayList<>();
    private @Nullable Hand hand;
    private @Nullable Assessment assessment;
    private String face = "";
    private PlanPainter.Showing showing = PlanPainter.Showing.NOTHING;
    private PlanCamera camera = new PlanCamera(new corewright.drawing.kit.PlanView(20, 0, 0), 1, 1);
    private boolean fitted = true;
    private PlanPainter.@Nullable Picture picture;
    private @Nullable WritableImage image;
    private PlaceListener touched = (x, y) -> {};
    private PlaceListener pointed = (x, y) -> {};
    private double pressX;
    private double pressY;
    private double lastX;
    private double lastY;
    private boolean handBusy;

    public PlanPane(Consumer<RuntimeException> failed) {
        painter = new PlanPainter(
                p -> Platform.runLater(() -> painted(p)), e -> Platform.runLater(() -> failed.accept(e)));
        getChildren().add(canvas);
        setFocusTraversable(true);
        getStyleClass().add("plan");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("Plan of the face");
        setMinSize(100, 100);
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(MouseEvent.MOUSE_RELEASED, this::release);
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> pointed.at(camera.xMm(e.getX()), camera.yMm(e.getY())));
        addEventHandler(ScrollEvent.SCROLL, e -> {
            zoom(Math.pow(WHEEL, e.getDeltaY()), e.getX(), e.getY());
            e.consume();
        });
        setOnZoom(e -> {
            zoom(e.getZoomFactor(), e.getX(), e.getY());
            e.consume();
        });
    }

    /** Shows this from now on; the plan keeps its place unless it is another face. */
    public void show(Assessment a, String faceName, PlanPainter.Showing how) {
        boolean other = assessment == null || !faceName.equals(face) || !outlineAs(a, faceName);
        assessment = a;
        face = faceName;
        showing = how;
        setAccessibleText("Plan of " + faceName);
        if (other) {
            fit();
        } else {
            ask();
        }
    }

    private boolean outlineAs(Assessment a, String faceName) {
        Assessment before = assessment;
        return before != null
                && before.survey().faces().stream()
                        .anyMatch(f -> f.name().equals(faceName)
                                && f.outline()
                                        .equalsExact(a.survey().face(faceName).outline()));
    }

    /** The whole face in the middle. */
    public void fit() {
        Assessment a = assessment;
        if (a != null && getWidth() >= LEAST_PX && getHeight() >= LEAST_PX) {
            camera = PlanCamera.fitting(a.survey().face(face), getWidth(), getHeight());
            fitted = true;
            ask();
        }
    }

    /** An area of the face, as large as the room allows. */
    public void look(Envelope area) {
        if (getWidth() >= LEAST_PX && getHeight() >= LEAST_PX && !area.isNull()) {
            double wide = area.getWidth() / camera.mmPerPx() / (getWidth() - 2 * SIDE_PX);
            double high = area.getHeight() / camera.mmPerPx() / (getHeight() - HEAD_PX - FOOT_PX);
            camera = camera.zoomed(1 / Math.max(1e-6, Math.max(wide, high)), getWidth() / 2, getHeight() / 2)
                    .centredOn(area.centre().x, area.centre().y)
                    .moved(0, (HEAD_PX - FOOT_PX) / 2);
            fitted = false;
            ask();
        }
    }

    void zoom(double factor, double px, double py) {
        camera = camera.zoomed(factor, px, py);
        fitted = false;
        ask();
    }

    public void zoomMiddle(double factor) {
        zoom(factor, getWidth() / 2, getHeight() / 2);
    }

    public void move(double dx, double dy) {
        camera = camera.moved(dx, dy);
        fitted = false;
        ask();
    }

    public void centre(double xMm, double yMm) {
        camera = camera.centredOn(xMm, yMm);
        fitted = false;
        ask();
    }

    public PlanCamera camera() {
        return camera;
    }

    public void onTouch(PlaceListener listener) {
        touched = listener;
    }

    public void onPoint(PlaceListener listener) {
        pointed = listener;
    }

    public void over(Overlay overlay) {
        overlays.add(overlay);
    }

    public void lift(Overlay overlay) {
        overlays.remove(overlay);
        draw();
    }

    /** Gives the plan into somebody's hand; null takes it back. */
    public void giveTo(@Nullable Hand other) {
        hand = other;
    }

    /** Paints what lies over the plan again. */
    public void refresh() {
        draw();
    }

    /** Whether the picture is of what is to be seen. */
    public boolean settled() {
        return picture != null
                && picture.wish.camera().equals(camera)
                && picture.wish.assessment() == assessment
                && picture.wish.showing().equals(showing);
    }

    /** How long the last picture took, milliseconds. */
    double paintedMs() {
        return picture == null ? 0 : picture.paintedMs;
    }

    private void ask() {
        draw();
        Assessment a = assessment;
        if (a != null && getWidth() >= LEAST_PX && getHeight() >= LEAST_PX) {
            painter.paint(new PlanPainter.Wish(a, face, camera, showing, sharpness()));
        }
    }

    /** Device pixels to one of the window. */
    public double sharpness() {
        return getScene() == null || getScene().getWindow() == null
                ? 1
                : getScene().getWindow().getOutputScaleX();
    }

    private void painted(PlanPainter.Picture p) {
        picture = p;
        image = p.pixels.image();
        draw();
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.setFill(fx(showing.look().tone().ground()));
        g.fillRect(0, 0, canvas.getWidth(), canvas.getHeight());
        PlanPainter.Picture p = picture;
        if (p != null && image != null && p.wish.face().equals(face)) {
            PlanCamera then = p.wish.camera();
            double s = then.view().scale() / camera.view().scale();
            double x = camera.px(0) - then.px(0) * s;
            double y = camera.py(0) - then.py(0) * s;
            g.drawImage(image, x, y, then.widthPx() * s, then.heightPx() * s);
        }
        overlays.forEach(o -> o.paint(g, camera));
    }

    public static javafx.scene.paint.Color fx(Color c) {
        return javafx.scene.paint.Color.rgb(c.getRed(), c.getGreen(), c.getBlue());
    }

    private void press(MouseEvent e) {
        requestFocus();
        pressX = lastX = e.getX();
        pressY = lastY = e.getY();
        handBusy = hand != null && hand.pressed(camera, e);
    }

    private void drag(MouseEvent e) {
        if (handBusy && hand != null) {
            hand.dragged(camera, e);
        } else {
            move(e.getX() - lastX, e.getY() - lastY);
        }
        lastX = e.getX();
        lastY = e.getY();
    }

    private void release(MouseEvent e) {
        if (handBusy && hand != null) {
            hand.released(camera, e);
        } else if (Math.hypot(e.getX() - pressX, e.getY() - pressY) < TOUCH_PX
                && (hand == null || !hand.touched(camera, e))) {
            touched.at(camera.xMm(e.getX()), camera.yMm(e.getY()));
        }
        handBusy = false;
    }

    @Override
    protected void layoutChildren() {
        double w = getWidth();
        double h = getHeight();
        if (w != canvas.getWidth() || h != canvas.getHeight()) {
            canvas.setWidth(w);
            canvas.setHeight(h);
            camera = camera.sized(w, h);
            if (fitted) {
                fit();
            } else {
                ask();
            }
        }
    }

    /** Waits, on any other thread than the window's, until what was last asked for is painted; a second at most. */
    public void awaitPainted() throws InterruptedException {
        painter.await();
    }

    public void stop() {
        painter.close();
    }
}
