package corewright.desktop.work;

import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.Held;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Attempts;
import corewright.desktop.state.Step;
import corewright.desktop.state.Typed;
import corewright.desktop.state.TypedPlace;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.survey.Sound;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.MouseEvent;

/** The fill proven: warmth while it cures, taps after, each noted by a touch of its place; and what is to be filled again. */
public final class FillCheckDesk implements Held, PlanPane.Hand {
    private static final String WARM = "warm to the hand";
    private static final String NOT_WARM = "not warm";
    private static final String MEASURED = "degrees measured";
    private static final String TAP = "tap after cure: ";

    private final Workbench bench;
    private final PlanPane plan;
    private final Attempts attempts;
    private final FillCheckMarks marks;
    private final ComboBox<String> what = new ComboBox<>();
    private final TextField minutes = field("fill-minutes", "minutes since the first cup");
    private final TextField degrees = field("fill-degrees", "degrees");
    private final TextField place = field("fill-place", "or type its place");
    private final Label problem = SlipView.text("", "message");
    private boolean open;

    public FillCheckDesk(Workbench bench, PlanPane plan) {
        this.bench = bench;
        this.plan = plan;
        attempts = new Attempts(() -> bench.survey().orElseThrow(), bench::edit);
        marks = new FillCheckMarks(bench);
        what.setId("fill-what");
        what.setAccessibleText("What was felt, measured or heard");
        what.setMaxWidth(Double.MAX_VALUE);
        what.getItems().setAll(WARM, NOT_WARM, MEASURED);
        for (Sound sound : Sound.values()) {
            what.getItems().add(TAP + sound.name().toLowerCase(java.util.Locale.ROOT));
        }
        what.setValue(WARM);
        what.setOnAction(e -> bench.say(""));
        place.setOnAction(e -> typed());
        problem.setId("fill-problem");
    }

    private static TextField field(String id, String prompt) {
        TextField field = new TextField();
        field.setId(id);
        field.setPromptText(prompt);
        field.setAccessibleText(prompt);
        return field;
    }

    /** The fill of the region selected is checked from now on. */
    public void open() {
        open = true;
        bench.region().ifPresent(r -> plan.look(r.possible().getEnvelopeInternal()));
        plan.giveTo(this);
        plan.over(marks);
        bench.say("");
    }

    public boolean isOpen() {
        return open;
    }

    @Override
    public void letGo() {
        if (open) {
            open = false;
            plan.giveTo(null);
            plan.lift(marks);
            plan.fit();
        }
    }

    @Override
    public boolean touch(double xMm, double yMm) {
        return false; // as a hand it has the touch before
    }

    @Override
    public Optional<Slip> slip() {
        if (open && (bench.sight().step() != Step.REPAIR || bench.region().isEmpty())) {
            letGo();
        }
        if (!open) {
            return Optional.empty();
        }
        String region = bench.region().orElseThrow().id();
        return Optional.of(new Slip(
                "Check the fill",
                region,
                "Choose what was felt or heard, then touch the place. Warm proves that mix is there, not that it is full;"
                        + " the taps after cure prove the fill.",
                "",
                null,
                List.of(),
                new Slip.Work(List.of(), "", "", List.of())));
    }

    @Override
    public Node[] nodes() {
        if (!open) {
            return new Node[0];
        }
        Units units = bench.sight().units();
        boolean warmth = !what.getValue().startsWith(TAP);
        List<Node> all = new ArrayList<>(List.of(what));
        if (warmth) {
            all.add(minutes);
        }
        if (what.getValue().equals(MEASURED)) {
            degrees.setPromptText(units == Units.METRIC ? "°C" : "°F");
            all.add(degrees);
        }
        all.add(place);
        problem.setText(attempts.problem());
        problem.setVisible(!attempts.problem().isEmpty());
        problem.setManaged(problem.isVisible());
        all.add(problem);
        all.add(SlipView.text("What it comes to", "head"));
        bench.region().ifPresent(r -> FillCheckWords.of(bench.found().orElseThrow(), r.id(), bench.fresh(), units)
                .forEach(line -> all.add(SlipView.text(line, "sentence"))));
        all.add(SlipView.key("fill-done", "Done checking", () -> {
            letGo();
            bench.say("");
        }));
        return all.toArray(Node[]::new);
    }

    private void typed() {
        try {
            note(TypedPlace.of(
                    bench.survey().orElseThrow().face(bench.face()),
                    place.getText(),
                    bench.sight().units()));
            place.clear();
        } catch (Typed e) {
            bench.say(String.valueOf(e.getMessage()));
        }
    }

    private void note(Spot spot) {
        String chosen = what.getValue();
        Units units = bench.sight().units();
        String min = minutes.getText();
        String deg = chosen.equals(MEASURED) ? degrees.getText() : "";
        if (chosen.startsWith(TAP)) {
            Sound sound = Sound.valueOf(chosen.substring(TAP.length()).toUpperCase(java.util.Locale.ROOT));
            attempts.make("a tap after cure", s -> FillNotes.tap(s, spot, sound));
        } else if (chosen.equals(MEASURED) && deg.isBlank()) {
            bench.say("Type the degrees first.");
            degrees.requestFocus();
            return;
        } else {
            attempts.make("warmth of the skin", s -> FillNotes.warmth(s, spot, min, deg, chosen.equals(WARM), units));
        }
        bench.say(bench.message());
    }

    @Override
    public boolean touched(PlanCamera camera, MouseEvent e) {
        note(new Spot(bench.face(), Math.rint(camera.xMm(e.getX())), Math.rint(camera.yMm(e.getY()))));
        return true;
    }
}
