package corewright.desktop;

import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;

/**
 * A hand on mouse and keys, through the toolkit's own robot, so that every event takes the way of a real one. It waits until each
 * event was taken and no longer, and its mouse goes straight there: a window's test is to take the window's time, not the hand's.
 */
final class Hand {
    private static final int DRAG_STEPS = 4;

    private final Stage stage;
    private final Robot robot;

    Hand(Stage stage) {
        this.stage = stage;
        robot = OpenWindow.onFx(Robot::new);
    }

    /** Down and up without a turn between in which what lies there could be made anew. */
    Hand clickOn(Point2D at) {
        move(at);
        return deed(() -> {
            robot.mousePress(MouseButton.PRIMARY);
            robot.mouseRelease(MouseButton.PRIMARY);
        });
    }

    Hand doubleClickOn(Point2D at) {
        return clickOn(at).clickOn(at);
    }

    /** From a point of the screen by so many pixels, with the first button held. */
    Hand drag(Point2D from, double dx, double dy) {
        move(from);
        press();
        for (int i = 1; i <= DRAG_STEPS; i++) {
            move(from.add(dx * i / DRAG_STEPS, dy * i / DRAG_STEPS));
        }
        return release();
    }

    /** Presses and lets go of each key in turn. */
    Hand type(KeyCode... keys) {
        for (KeyCode key : keys) {
            deed(() -> robot.keyPress(key));
            deed(() -> robot.keyRelease(key));
        }
        return this;
    }

    /** One key while Control is held. */
    Hand control(KeyCode key) {
        deed(() -> robot.keyPress(KeyCode.CONTROL));
        type(key);
        return deed(() -> robot.keyRelease(KeyCode.CONTROL));
    }

    /** Characters into what has the focus; the robot knows keys only, and which key makes which character is the keyboard's. */
    Hand write(String text) {
        text.codePoints().mapToObj(Character::toString).forEach(c -> deed(() -> key(c)));
        return this;
    }

    /** One character into what has the focus, in this turn of the window's thread. */
    void key(String character) {
        Event.fireEvent(
                stage.getScene().getFocusOwner(),
                new KeyEvent(KeyEvent.KEY_TYPED, character, "", KeyCode.UNDEFINED, false, false, false, false));
    }

    Hand move(Point2D to) {
        return deed(() -> robot.mouseMove(to));
    }

    private void press() {
        deed(() -> robot.mousePress(MouseButton.PRIMARY));
    }

    private Hand release() {
        return deed(() -> robot.mouseRelease(MouseButton.PRIMARY));
    }

    /** What the robot does is handed to the window's thread, behind what is already there: two turns later it has been taken. */
    private Hand deed(Runnable deed) {
        OpenWindow.doFx(deed);
        OpenWindow.doFx(() -> {});
        OpenWindow.doFx(() -> {});
        return this;
    }
}
