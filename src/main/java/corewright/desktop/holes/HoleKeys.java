package corewright.desktop.holes;

import corewright.desktop.state.Workbench;
import corewright.repair.pattern.HoleTrial;
import corewright.survey.MovedHole;
import javafx.scene.input.KeyEvent;
import org.locationtech.jts.geom.Coordinate;

/**
 * Keys for the holes: H and V add, Page Down and Page Up take the next or the one before, arrows move what is held, Delete takes it
 * away, Escape puts it back.
 */
final class HoleKeys {
    private static final double STEP_MM = 5;
    private static final double LONG_STEP_MM = 25;

    private final Workbench bench;
    private final HolesModel model;

    HoleKeys(Workbench bench, HolesModel model) {
        this.bench = bench;
        this.model = model;
    }

    /** Whether the key was meant for the holes. */
    boolean pressed(KeyEvent e) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return false;
        }
        return model.heldAt().isPresent() ? held(e) : free(e);
    }

    private boolean free(KeyEvent e) {
        switch (e.getCode()) {
            case H -> add(MovedHole.Kind.HOLE);
            case V -> add(MovedHole.Kind.VENT);
            case PAGE_DOWN -> model.next(1);
            case PAGE_UP -> model.next(-1);
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean held(KeyEvent e) {
        double step = e.isShiftDown() ? LONG_STEP_MM : STEP_MM;
        boolean down = bench.survey()
                .filter(s -> s.face(bench.face()).plusYPointsDown())
                .isPresent();
        double up = down ? -step : step;
        switch (e.getCode()) {
            case LEFT -> model.nudge(-step, 0);
            case RIGHT -> model.nudge(step, 0);
            case UP -> model.nudge(0, up);
            case DOWN -> model.nudge(0, -up);
            case ESCAPE -> model.putBack();
            case DELETE -> {
                if (model.moved()) {
                    model.putBack();
                } else {
                    model.remove();
                }
            }
            default -> {
                return free(e);
            }
        }
        return true;
    }

    /** Held where nothing reaches, else in the middle of the region, to be moved from there. */
    private void add(MovedHole.Kind kind) {
        Coordinate out = model.now().map(HoleTrial.Result::outAt).orElse(null);
        Coordinate at = out != null
                ? out
                : bench.region().map(r -> r.label().getCoordinate()).orElse(null);
        if (at != null) {
            model.add(kind, at.x, at.y);
        }
    }
}
