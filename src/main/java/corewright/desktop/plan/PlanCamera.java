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
        return new PlanCamera(ScreenMap.fitting(face, box(widthPx, heightPx)), widthPx, heightPx);
    }

    /** The paper behind the window. */
    public Box box() {
        return box(widthPx, heightPx);
    }

    private static Box box(double widthPx, double heightPx) {
        return new Box(0, 0, Math.max(1, widthPx / K), Math.max(1, heightPx / K));
    }

    public double xMm(double px) {
        return view.surveyX(px / K);
    }

    public double yMm(double py) {
        return view.surveyY(py / K);
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
        return with(view.moved(dx / K, dy / K));
    }

    /** Closer (factor above 1) or further; the place at (px, py) stays where it is. */
    public PlanCamera zoomed(double factor, double px, double py) {
        double scale = Math.max(CLOSEST, Math.min(FURTHEST, view.scale() / factor));
        return with(view.scaled(scale).with(xMm(px), yMm(py), px / K, py / K));
    }

    /** The same scale with a place in the middle. */
    public PlanCamera centredOn(double xMm, double yMm) {
        return with(view.with(xMm, yMm, widthPx / 2 / K, heightPx / 2 / K));
    }

    /** Another window, the same middle. */
    public PlanCamera sized(double width, double height) {
        return new PlanCamera(view, width, height).moved((width - widthPx) / 2, (height - heightPx) / 2);
    }

    private PlanCamera with(PlanView other) {
        return new PlanCamera(other, widthPx, heightPx);
    }
}
