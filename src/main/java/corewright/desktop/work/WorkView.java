package corewright.desktop.work;

import corewright.desktop.slip.BigKeys;
import corewright.desktop.slip.SlipView;
import corewright.desktop.work.WorkModel.Field;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.ScreenLook;
import corewright.repair.plan.Batch;
import corewright.repair.plan.CupTarget;
import corewright.repair.plan.Hole;
import corewright.survey.Face;
import java.util.ArrayList;
import java.util.List;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/** Work at the boat over the whole window: the holes, the cup and its clocks on one side, big keys on the other. */
public final class WorkView extends HBox {
    /** A lower window has room for the cup's words alone. */
    private static final double CUP_FROM = 640;

    private final WorkModel model;
    private final Runnable leave;
    private final Runnable takeBack;
    private final WorkPlan plan;
    private final Label title = new Label();
    private final Label place = new Label();
    private final Label planned = new Label();
    private final Label value = new Label();
    private final Label unit = new Label();
    private final Label cup = new Label();
    private final WorkCup drawn;
    private final WorkCups cups;
    private final VBox changes = new VBox(8);
    private final Button changed;
    private final GridPane clocks = new GridPane();
    private final Label sum = SlipView.text("", "quiet");
    private final Label says = SlipView.text("", "walk-question");
    private final Label revision = SlipView.text("", "quiet");
    private final HBox vents = new HBox(8);
    private final Button grams = key("work-grams", "grams in", () -> write(Field.GRAMS));
    private final Button depth = key("work-depth", "depth felt", () -> write(Field.DEPTH));
    private final Button ooze;
    private final Button leak;
    private final Button mix;
    private final Button issue;
    private final Button keep;
    private final Timeline tick;
    private final List<Button> needHole = new ArrayList<>();
    private boolean reading;

    /**
     * @param takeBack takes the last edit back
     */
    public WorkView(WorkModel model, Face face, ScreenLook look, Runnable leave, Runnable takeBack) {
        this.model = model;
        this.leave = leave;
        this.takeBack = takeBack;
        drawn = new WorkCup(look);
        cups = new WorkCups(look);
        changed = key("work-changed", "What changed", () -> act(() -> reading = !reading));
        plan = new WorkPlan(model, face, look, h -> act(() -> model.choose(h)));
        ooze = key("work-ooze", "mix at the next hole", () -> act(model::ooze));
        leak = key("work-leak", "leaks below", () -> act(model::leak));
        mix = key("work-mix", "Cup is mixed now", () -> act(model::mix));
        issue = key("work-issue", "Take the new revision", () -> act(model::freeze));
        keep = key("work-keep", "", () -> act(model::keep));
        keep.getStyleClass().add("next");
        getStyleClass().add("walk");
        setId("work-view");
        VBox boat = boat();
        VBox hand = hand();
        HBox.setHgrow(boat, Priority.ALWAYS);
        HBox.setHgrow(hand, Priority.ALWAYS);
        boat.setPrefWidth(700);
        hand.setPrefWidth(738);
        hand.setMinWidth(470);
        getChildren().setAll(boat, hand);
        setFocusTraversable(true);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        tick = new Timeline(new KeyFrame(Duration.seconds(1), e -> time()));
        tick.setCycleCount(Timeline.INDEFINITE);
        tick.play();
        heightProperty().addListener(o -> show());
        model.changed().listen(this::show);
        show();
    }

    private VBox boat() {
        cup.getStyleClass().add("work-cup");
        cup.setId("work-cup");
        cup.setWrapText(true);
        clocks.getStyleClass().add("facts");
        VBox.setVgrow(plan, Priority.ALWAYS);
        HBox.setHgrow(clocks, Priority.ALWAYS);
        HBox inHand = new HBox(12, drawn, clocks);
        inHand.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        Label what = new Label(
                String.join(", ", model.regions().stream().map(r -> r.id()).toList()) + ": inject");
        what.getStyleClass().add("work-what");
        what.setId("work-what");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(12, what, gap, changed);
        head.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        changes.setId("work-changes");
        VBox.setVgrow(changes, Priority.ALWAYS);
        VBox box = new VBox(8, head, plan, changes, cup, inHand, mix, cups, sum, revision, issue);
        box.getStyleClass().add("work-boat");
        box.setMinWidth(300);
        sum.setId("work-sum");
        return box;
    }

    private VBox hand() {
        title.getStyleClass().add("walk-place");
        title.setId("work-hole");
        place.getStyleClass().add("walk-measured");
        planned.getStyleClass().add("walk-last");
        value.getStyleClass().add("work-value");
        value.setId("work-value");
        unit.getStyleClass().add("walk-scale");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label head = new Label("Work at the boat");
        head.getStyleClass().add("walk-title");
        Button undo = key("work-undo", "Undo", takeBack);
        Button out = key("work-leave", "Leave work", this::leave);
        HBox top = new HBox(8, head, gap, undo, out);
        top.getStyleClass().add("walk-head");
        Region middle = new Region();
        HBox.setHgrow(middle, Priority.ALWAYS);
        VBox words = new VBox(title, place, planned);
        VBox figure = new VBox(value, unit);
        figure.setAlignment(javafx.geometry.Pos.BOTTOM_RIGHT);
        figure.setMinWidth(USE_PREF_SIZE);
        HBox where = new HBox(words, middle, figure);
        HBox fields = row(grams, depth, ooze, leak);
        GridPane pad = pad();
        VBox.setVgrow(pad, Priority.ALWAYS);
        says.setId("work-says");
        VBox box = new VBox(8, top, where, fields, vents, pad, says);
        box.getStyleClass().add("walk-hand");
        return box;
    }

    private static HBox row(Button... keys) {
        HBox row = new HBox(8);
        for (Button key : keys) {
            HBox.setHgrow(key, Priority.ALWAYS);
            row.getChildren().add(key);
        }
        return row;
    }

    private Button key(String id, String words, Runnable deed) {
        Button key = BigKeys.key(id, words, deed);
        key.getStyleClass().add("key");
        return key;
    }

    private GridPane pad() {
        GridPane pad = new GridPane();
        BigKeys.fourRows(pad);
        for (int i = 0; i < 4; i++) {
            pad.getColumnConstraints().add(BigKeys.share(i == 3 ? 34 : 22));
        }
        for (int n = 1; n <= 9; n++) {
            int figure = n;
            pad.add(digit("work-key-" + n, "" + n, () -> model.digit(figure)), (n - 1) % 3, 2 - (n - 1) / 3);
        }
        pad.add(digit("work-clear", "clear", model::clear), 0, 3);
        pad.add(digit("work-key-0", "0", () -> model.digit(0)), 1, 3);
        pad.add(digit("work-point", ".", model::point), 2, 3);
        pad.add(digit("work-nothing", "took nothing", model::tookNothing), 3, 0);
        pad.add(keep, 3, 1, 1, 3);
        keep.getStyleClass().add("pad-key");
        needHole.add(keep);
        return pad;
    }

    private Button digit(String id, String words, Runnable deed) {
        Button key = key(id, words, () -> act(deed));
        key.getStyleClass().addAll("pad-key", words.length() == 1 ? "digit" : "word");
        needHole.add(key);
        return key;
    }

    private void write(Field into) {
        act(() -> model.write(into));
    }

    private void leave() {
        stop();
        leave.run();
    }

    /** The clocks of the window stand still; those of the mix do not. */
    public void stop() {
        tick.stop();
    }

    private void act(Runnable deed) {
        deed.run();
        show();
    }

    private void pressed(KeyEvent e) {
        if (e.getCode() == KeyCode.ESCAPE) {
            leave();
        } else if (e.getCode() == KeyCode.ENTER) {
            act(model::keep);
        } else if (e.getCode() == KeyCode.BACK_SPACE) {
            act(model::backspace);
        } else {
            return;
        }
        e.consume();
    }

    private void typed(KeyEvent e) {
        if (e.getCharacter().length() != 1) {
            return;
        }
        char c = Character.toLowerCase(e.getCharacter().charAt(0));
        int figure = BigKeys.figure(c);
        if (figure >= 0) {
            act(() -> model.digit(figure));
        } else if (c == '.' || c == ',') {
            act(model::point);
        } else if (c == 'g') {
            write(Field.GRAMS);
        } else if (c == 'd') {
            write(Field.DEPTH);
        } else if (c == 'l') {
            act(model::leak);
        } else {
            return;
        }
        e.consume();
    }

    /** Takes a hole in hand again, by its place in the working order. */
    public void take(int order) {
        act(() -> model.choose(model.holes().get(order)));
    }

    /** Everything as it is now. */
    public void show() {
        Hole hole = model.hole().orElse(null);
        title.setText(hole == null ? "All holes are done" : model.name(hole));
        place.setText(hole == null ? "" : model.place(hole));
        planned.setText(hole == null ? "" : model.how(hole));
        boolean writesDepth = model.field() == Field.DEPTH;
        value.setText(writesDepth ? model.depth() : model.grams());
        unit.setText(
                hole == null
                        ? ""
                        : writesDepth
                                ? "mm felt"
                                : "g went in, of " + Figures.fixed(model.plannedG(hole), 0) + " planned");
        mark(grams, !writesDepth);
        mark(depth, writesDepth);
        mark(ooze, model.oozed());
        mark(leak, model.leaks());
        part(ooze, model.next().isPresent());
        needHole.forEach(k -> k.setVisible(hole != null));
        keep.setText(hole == null ? "" : "Keep " + model.grams() + " g" + after());
        vents.getChildren().clear();
        for (Hole v : model.vents()) {
            Button key =
                    key("work-vent-" + v.id(), Figures.holeNumber(v.id()) + " showed", () -> act(() -> model.vent(v)));
            HBox.setHgrow(key, Priority.ALWAYS);
            mark(key, model.shown(v));
            vents.getChildren().add(key);
        }
        part(vents, hole != null && !model.vents().isEmpty());
        says.setText(model.says());
        part(says, !model.says().isEmpty());
        sum.setText(CupsInRow.sum(model));
        revisions();
        part(mix, model.cup().isPresent() && !model.mixed());
        boolean high = getHeight() == 0 || getHeight() >= CUP_FROM;
        cup.setText(inHand(hole, high));
        drawn.show(model.cup().orElse(null), model.target().orElse(null));
        part(drawn, drawn.isVisible() && high);
        cups.show(CupsInRow.of(model));
        part(cups, high);
        plan.show();
        time();
    }

    /** The cup and for what it is; its targets too where it is not drawn. */
    private String inHand(@Nullable Hole hole, boolean isDrawn) {
        Batch batch = model.cup().orElse(null);
        CupTarget target = model.target().orElse(null);
        if (batch == null || target == null || hole == null) {
            return "No cup is left to mix";
        }
        return isDrawn
                ? "Cup " + batch.number() + ", " + model.nameInside(hole)
                : "Cup " + batch.number() + ": resin to " + Figures.fixed(target.firstToG(), 0) + " g, both to "
                        + Figures.fixed(target.secondToG(), 0) + " g";
    }

    /** What another revision altered; read in place of the plan. */
    private void revisions() {
        String head = model.changed().head();
        part(changed, !head.isEmpty());
        reading &= !head.isEmpty();
        changed.setText(reading ? "Back to the plan" : "What changed");
        part(plan, !reading);
        part(changes, reading);
        if (reading) {
            changes.getChildren().setAll(SlipView.text(head, "head"));
            List<String> said = model.changes();
            said.forEach(c -> changes.getChildren().add(SlipView.text(c, "sentence")));
            if (said.isEmpty()) {
                changes.getChildren().add(SlipView.text("Nothing here: what changed lies elsewhere.", "sentence"));
            }
        }
        revision.setText(head);
        part(revision, !head.isEmpty() && !reading);
        part(issue, model.changed().waits());
    }

    private String after() {
        return model.next().map(n -> "\nthen " + model.nameInside(n)).orElse("\nthe last one");
    }

    private static void mark(Button key, boolean on) {
        key.getStyleClass().remove("chosen");
        if (on) {
            key.getStyleClass().add("chosen");
        }
    }

    private static void part(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private void time() {
        clocks.getChildren().clear();
        int row = 0;
        for (Clock clock : model.clocks()) {
            Label left = new Label(clock.minutes());
            left.getStyleClass().add(clock.leftS() < 60 && row == 0 ? "work-late" : "work-clock");
            left.setMinWidth(Region.USE_PREF_SIZE);
            Label what = new Label(clock.what());
            what.setWrapText(true);
            clocks.addRow(row++, left, what);
        }
    }
}
