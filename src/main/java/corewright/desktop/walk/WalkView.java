package corewright.desktop.walk;

import corewright.desktop.slip.BigKeys;
import corewright.drawing.kit.Orientation;
import corewright.drawing.screen.ScreenLook;
import corewright.survey.Sound;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;

/** The walk over the whole window: the plan on one side, everything the thumb needs on the other. */
public final class WalkView extends HBox {
    private static final List<String> REASONS = List.of(
            "no room for the meter", "hardware in the way", "standing water", "covered by gear", "cannot be reached");

    private final GridWalk walk;
    private final ScreenLook look;
    private final Runnable leave;
    private final Runnable takeBack;
    private final WalkPlan plan;
    private final VBox hand = new VBox();
    private final GridPane pad = new GridPane();
    private final GridPane taps = new GridPane();
    private final VBox why = new VBox();
    private final List<Button> tapKeys = new ArrayList<>();
    private final Label progress = new Label();
    private final Label place = new Label();
    private final Label measured = new Label();
    private final Label last = new Label();
    private final Label value = new Label();
    private final Label scale = new Label();
    private final Label nextPlace = new Label();
    private final Label question = new Label();
    private final Button left = new Button("Left hand");
    private boolean leftHand;

    /** @param takeBack takes the last edit back, whichever it was */
    public WalkView(GridWalk walk, ScreenLook look, Runnable leave, Runnable takeBack) {
        this.walk = walk;
        this.leave = leave;
        this.takeBack = takeBack;
        this.look = look;
        plan = new WalkPlan((x, y) -> act(() -> walk.goNear(x, y)));
        getStyleClass().add("walk");
        setId("walk-view");
        HBox.setHgrow(plan, Priority.ALWAYS);
        plan.setPrefWidth(700);
        hand.getStyleClass().add("walk-hand");
        hand.setPrefWidth(738);
        hand.setMinWidth(500);
        StackPane keys = new StackPane(pad, why);
        keys.setMinHeight(0);
        keys.setPrefHeight(190);
        hand.getChildren().addAll(head(), where(), taps, keys, again(), question());
        VBox.setVgrow(hand.getChildren().get(3), Priority.ALWAYS);
        fillTaps();
        BigKeys.fourRows(pad);
        fillWhy();
        setFocusTraversable(true);
        addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        arrange();
        show();
    }

    private void leave() {
        walk.leave();
        leave.run();
    }

    private HBox head() {
        Label title = new Label("Walk the grid, ");
        title.getStyleClass().add("walk-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        progress.getStyleClass().add("walk-progress");
        progress.setWrapText(true);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        left.setMinWidth(Region.USE_PREF_SIZE);
        left.setId("left-hand");
        left.setOnAction(e -> {
            leftHand = !leftHand;
            arrange();
        });
        Button out = new Button("Leave the walk");
        out.setMinWidth(Region.USE_PREF_SIZE);
        out.setId("leave-walk");
        out.setOnAction(e -> leave());
        HBox head = new HBox(title, progress, gap, left, out);
        head.getStyleClass().add("walk-head");
        return head;
    }

    private HBox where() {
        place.getStyleClass().add("walk-place");
        place.setId("walk-place");
        measured.setId("walk-measured");
        measured.getStyleClass().add("walk-measured");
        last.getStyleClass().add("walk-last");
        value.getStyleClass().add("walk-value");
        value.setId("walk-value");
        scale.getStyleClass().add("walk-scale");
        VBox words = new VBox(place, measured, last);
        words.setAlignment(Pos.BOTTOM_LEFT);
        VBox figure = new VBox(value, scale);
        figure.setAlignment(Pos.BOTTOM_RIGHT);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox row = new HBox(words, gap, figure);
        row.getStyleClass().add("walk-where");
        return row;
    }

    private void fillTaps() {
        taps.setHgap(8);
        for (Sound sound : Sound.values()) {
            VBox face = new VBox();
            face.setAlignment(Pos.CENTER);
            face.setSpacing(6);
            Label word = new Label(sound.name().toLowerCase(Locale.ROOT));
            word.getStyleClass().add("tap-word");
            face.getChildren().add(word);
            face.getChildren().add(sign(sound));
            Button key = new Button();
            key.setGraphic(face);
            key.getStyleClass().add("tap-key");
            key.setId("tap-" + sound.name().toLowerCase(Locale.ROOT));
            key.setAccessibleText("Tap sounds " + sound.name().toLowerCase(Locale.ROOT));
            key.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
            key.setFocusTraversable(false);
            key.setOnAction(e -> act(() -> walk.tap(sound)));
            tapKeys.add(key);
        }
    }

    /** The same lines as on the map. */
    private static Node sign(Sound sound) {
        VBox lines = new VBox(5);
        lines.setAlignment(Pos.CENTER);
        lines.setMinHeight(14);
        for (int i = 0; i < sound.ordinal(); i++) {
            Region line = new Region();
            line.getStyleClass().add("tap-line");
            lines.getChildren().add(line);
        }
        if (sound == Sound.SOUND) {
            Region dot = new Region();
            dot.getStyleClass().add("tap-dot");
            lines.getChildren().add(dot);
        }
        return lines;
    }

    /** Right hand as laid out; for the left hand everything is mirrored, so that Next lies under the other thumb. */
    private void arrange() {
        getChildren().setAll(leftHand ? List.of(hand, plan) : List.of(plan, hand));
        left.setText(leftHand ? "Right hand" : "Left hand");
        getStyleClass().remove("left");
        if (leftHand) {
            getStyleClass().add("left");
        }
        pad.getChildren().clear();
        pad.getColumnConstraints().clear();
        taps.getChildren().clear();
        taps.getColumnConstraints().clear();
        for (int c = 0; c < 4; c++) {
            pad.getColumnConstraints().add(BigKeys.share(c == column(3) ? 32.5 : 22.5));
        }
        for (int i = 0; i < 3; i++) {
            taps.getColumnConstraints().add(BigKeys.share(100.0 / 3));
            taps.add(tapKeys.get(leftHand ? 2 - i : i), i, 0);
        }
        for (int n = 1; n <= 9; n++) {
            int figure = n;
            pad.add(
                    padKey("key-" + n, "" + n, "digit", () -> walk.digit(figure)),
                    shifted((n - 1) % 3),
                    2 - (n - 1) / 3);
        }
        pad.add(padKey("back-one", "back one", "word", walk::back), shifted(0), 3);
        pad.add(padKey("key-0", "0", "digit", () -> walk.digit(0)), shifted(1), 3);
        pad.add(padKey("skip", "skip, why", "word", () -> why.setVisible(true)), shifted(2), 3);
        pad.add(padKey("clear", "clear", "word", walk::clear), column(3), 0);
        pad.add(padKey("over", "over the scale, >" + overScale(), "word", walk::over), column(3), 1);
        pad.add(next(), column(3), 2, 1, 2);
    }

    private String overScale() {
        return walk.scale().substring(walk.scale().lastIndexOf(' ') + 1);
    }

    private int column(int c) {
        return leftHand ? 3 - c : c;
    }

    /** Figures keep their order from left to right in either hand. */
    private int shifted(int c) {
        return leftHand ? c + 1 : c;
    }

    private Button padKey(String id, String words, String style, Runnable deed) {
        Button key = BigKeys.key(id, words, () -> act(deed));
        key.getStyleClass().addAll("pad-key", style);
        return key;
    }

    private Button next() {
        Label word = new Label("Next");
        word.getStyleClass().add("next-word");
        nextPlace.getStyleClass().add("next-place");
        nextPlace.setWrapText(true);
        nextPlace.setTextAlignment(TextAlignment.CENTER);
        VBox face = new VBox(word, nextPlace);
        face.setAlignment(Pos.CENTER);
        Button key = padKey("next", "", "next", walk::next);
        key.setGraphic(face);
        key.setAccessibleText("Keep and next");
        return key;
    }

    private HBox again() {
        Button more = padKey("repeat", "once more here", "word", walk::repeat);
        Button point = padKey("point", "decimal point", "word", walk::point);
        Button undo = padKey("walk-undo", "undo", "word", () -> {});
        undo.setOnAction(e -> takeBack.run());
        HBox row = new HBox(more, point, undo);
        row.getStyleClass().add("walk-again");
        HBox.setHgrow(undo, Priority.ALWAYS);
        HBox.setHgrow(more, Priority.ALWAYS);
        HBox.setHgrow(point, Priority.ALWAYS);
        return row;
    }

    private Label question() {
        question.setWrapText(true);
        question.setId("walk-question");
        question.getStyleClass().add("walk-question");
        question.setMinHeight(36);
        question.setMaxWidth(Double.MAX_VALUE);
        return question;
    }

    private void fillWhy() {
        why.getStyleClass().add("walk-why");
        why.setVisible(false);
        Label head = new Label("Why is it left out?");
        head.getStyleClass().add("walk-measured");
        why.getChildren().add(head);
        for (String reason : REASONS) {
            why.getChildren().add(reasonKey(reason));
        }
        TextField other = new TextField();
        other.setPromptText("another reason, then Enter");
        other.setId("skip-reason");
        other.setOnAction(e -> skip(other.getText()));
        Button no = padKey("no-skip", "Do not skip it", "word", () -> why.setVisible(false));
        why.getChildren().addAll(other, no);
    }

    private Button reasonKey(String reason) {
        Button key = padKey("why-" + reason.replace(' ', '-'), reason, "word", () -> {});
        key.setOnAction(e -> skip(reason));
        VBox.setVgrow(key, Priority.ALWAYS);
        return key;
    }

    private void skip(String reason) {
        why.setVisible(false);
        act(() -> walk.skip(reason));
    }

    private void key(KeyEvent e) {
        if (why.isVisible()) {
            if (e.getCode() == KeyCode.ESCAPE) {
                why.setVisible(false);
                e.consume();
            }
            return;
        }
        switch (e.getCode()) {
            case ENTER -> act(walk::next);
            case BACK_SPACE -> act(walk::backspace);
            case ESCAPE -> leave();
            case DELETE -> act(walk::clear);
            default -> {
                return;
            }
        }
        e.consume();
    }

    private void typed(KeyEvent e) {
        if (why.isVisible() || e.getCharacter().length() != 1) {
            return;
        }
        char c = Character.toLowerCase(e.getCharacter().charAt(0));
        int figure = BigKeys.figure(c);
        if (figure >= 0) {
            act(() -> walk.digit(figure));
        } else {
            switch (c) {
                case 's' -> act(() -> walk.tap(Sound.SOUND));
                case 'd' -> act(() -> walk.tap(Sound.DULL));
                case 'h' -> act(() -> walk.tap(Sound.HOLLOW));
                case '>', '+' -> act(walk::over);
                case '.', ',' -> act(walk::point);
                case 'r' -> act(walk::repeat);
                case 'x' -> why.setVisible(true);
                default -> {
                    return;
                }
            }
        }
        e.consume();
    }

    /** The survey was changed by undo or redo, as {@code said}. */
    public void follow(Survey survey, String said) {
        walk.follow(survey, said);
        show();
    }

    private void act(Runnable deed) {
        deed.run();
        show();
    }

    private void show() {
        String seen = Orientation.bowUp(walk.face());
        progress.setText(walk.progress() + " " + Character.toUpperCase(seen.charAt(0)) + seen.substring(1) + ".");
        place.setText(walk.place());
        measured.setText(walk.measured());
        last.setText(walk.last());
        value.setText(walk.entry().shown());
        scale.setText(walk.scale());
        nextPlace.setText(walk.nextPlace());
        question.setText(walk.question());
        for (int i = 0; i < tapKeys.size(); i++) {
            tapKeys.get(i).getStyleClass().remove("chosen");
            if (walk.entry().tap() == Sound.values()[i]) {
                tapKeys.get(i).getStyleClass().add("chosen");
            }
        }
        plan.show(walk, look);
    }
}
