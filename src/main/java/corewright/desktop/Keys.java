package corewright.desktop;

import corewright.desktop.state.Step;
import corewright.desktop.state.Workbench;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys of the window. Letters act only outside text fields and outside tasks that take the whole window. */
final class Keys {
    private static final double STEP_PX = 60;

    private final Workbench bench;
    private final MainView view;
    private final Tasks desk;
    private boolean layerNext;

    Keys(Workbench bench, MainView view, Tasks desk) {
        this.bench = bench;
        this.view = view;
        this.desk = desk;
    }

    void listen(Scene scene) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (withControl(e)) {
                e.consume();
            } else if (!(scene.getFocusOwner() instanceof TextInputControl) && !view.inTask() && plain(e)) {
                e.consume();
            }
        });
        scene.addEventFilter(KeyEvent.KEY_TYPED, e -> {
            if (!(scene.getFocusOwner() instanceof TextInputControl) && !view.inTask() && typed(e.getCharacter())) {
                e.consume();
            }
        });
    }

    private boolean withControl(KeyEvent e) {
        if (!e.isShortcutDown()) {
            return false;
        }
        if (e.getCode() == KeyCode.Z) {
            if (e.isShiftDown()) {
                bench.redo();
            } else {
                bench.undo();
            }
            return true;
        }
        if (e.getCode() == KeyCode.F && !view.inTask()) {
            view.focusFind();
            return true;
        }
        if (e.getCode() == KeyCode.O) {
            if (e.isShiftDown()) {
                desk.openFolder();
            } else {
                desk.open();
            }
            return true;
        }
        return false;
    }

    private boolean plain(KeyEvent e) {
        if (desk.key(e)) {
            return true;
        }
        boolean onPlan = view.plan().isFocused();
        switch (e.getCode()) {
            case F1 -> view.task(new KeysView(() -> view.task(null)));
            case PAGE_DOWN -> bench.selectNext(1);
            case PAGE_UP -> bench.selectNext(-1);
            case ESCAPE -> {
                view.holding().letGo();
                bench.select("");
            }
            case LEFT -> {
                return pan(onPlan, STEP_PX, 0);
            }
            case RIGHT -> {
                return pan(onPlan, -STEP_PX, 0);
            }
            case UP -> {
                return pan(onPlan, 0, STEP_PX);
            }
            case DOWN -> {
                return pan(onPlan, 0, -STEP_PX);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean pan(boolean onPlan, double dx, double dy) {
        if (onPlan) {
            view.plan().move(dx, dy);
        }
        return onPlan;
    }

    private boolean typed(String character) {
        if (character.length() != 1) {
            return false;
        }
        char c = Character.toLowerCase(character.charAt(0));
        if (c >= '1' && c <= '9' && layerNext) {
            view.legend().toggle(c - '0');
            layerNext = false;
            return true;
        }
        layerNext = c == 'l';
        if (c >= '1' && c <= '6') {
            bench.sight().go(Step.values()[c - '1']);
            return true;
        }
        switch (c) {
            case 'w' -> desk.walk();
            case 'i' -> desk.importCsv();
            case 'u' -> desk.showInsight();
            case 'm' -> desk.setUp();
            case 'f' -> view.plan().fit();
            case '+', '=' -> view.plan().zoomMiddle(1.25);
            case '-' -> view.plan().zoomMiddle(0.8);
            case 'n' -> bench.sight().appear(bench.sight().appearance().next());
            case 't' -> bench.sight().tint(!bench.sight().tinted());
            case 'g' -> view.focusFind();
            case '!' -> view.nextFinding();
            default -> {
                return c == 'l';
            }
        }
        return true;
    }
}
