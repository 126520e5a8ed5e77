package corewright.desktop.plan;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.screen.ScreenMap;
import corewright.survey.Face;

/**
 * Which part of a face the window shows.
 *
 * @param view from survey to paper millimetres
 * @param widthPx of the plan in the window
 * @param heightPx of the plan in the window
 */
public record PlanCamera(PlanView view, double widthPx, double heightPx) {
    /** From a hand's breadth over the whole window to a hundred-metre deck. */
    private static final double CLOSEST = 0.5;

    private static final double FURTHEST = 500;
    private static final double K = ScreenMap.PX_PER_MM;

    /** The whole face in the middle. */
    public static PlanCamera fitting(Face face, double widthPx, double heightPx) {
        PlanCamera any = new PlanCamera(new PlanView(20, 0, 0), widthPx, heightPx);
        return new PlanCamera(ScreenMap.fitting(face, any.box()), widthPx, heightPx);
    }

    /** The paper behind the window. */
    public Box box() {
        return new Box(0, 0, Math.max(1, widthPx / K), Math.max(1, heightPx / K));
    }

    public double xMm(double px) {
        return (px / K - view.datumX()) * view.scale();
    }

    public double yMm(double py) {
        return (view.datumY() - py / K) * view.scale();
    }

    public double px(double xMm) {
        return view.x(xMm) * K;
    }

    public double py(double yMm) {
        return view.y(yMm) * K;
    }

    /** Survey millimetres to one pixel. */
    public double mmPerPx() {
        return view.scale() / K;
    }

    public PlanCamera moved(double dx, double dy) {
        return with(new PlanView(view.scale(), view.datumX() + dx / K, view.datumY() + dy / K));
    }

    /** Closer (factor above 1) or further; the place at (px, py) stays where it is. */
    public PlanCamera zoomed(double factor, double px, double py) {
        double scale = Math.max(CLOSEST, Math.min(FURTHEST, view.scale() / factor));
        double x = xMm(px);
        double y = yMm(py);
        return with(new PlanView(scale, px / K - x / scale, py / K + y / scale));
    }

    /** The same scale with a place in the middle. */
    public PlanCamera centredOn(double xMm, double yMm) {
        double scale = view.scale();
        return with(new PlanView(scale, widthPx / 2 / K - xMm / scale, heightPx / 2 / K + yMm / scale));
    }

    /** Another window, the same middle. */
    public PlanCamera sized(double width, double height) {
        return new PlanCamera(view, width, height).moved((width - widthPx) / 2, (height - heightPx) / 2);
    }

    private PlanCamera with(PlanView other) {
        return new PlanCamera(other, widthPx, heightPx);
    }
}
