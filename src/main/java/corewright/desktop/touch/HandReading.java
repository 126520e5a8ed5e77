package corewright.desktop.touch;

import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.Held;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Attempts;
import corewright.desktop.state.FreeIds;
import corewright.desktop.state.Step;
import corewright.desktop.state.Typed;
import corewright.desktop.state.TypedPlace;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/** Readings noted one by one: what was found is filled in, then its place is touched or typed. */
public final class HandReading implements Held, PlanPane.Hand {
    private static final Origin BY_HAND = new Origin("by hand", 0);
    private static final List<Reading.Kind> KINDS = List.of(
            Reading.Kind.PROBE, Reading.Kind.FEELER, Reading.Kind.PLUG, Reading.Kind.MOISTURE, Reading.Kind.TAP);

    private final Workbench bench;
    private final PlanPane plan;
    private final Attempts attempts;
    private final ComboBox<String> kinds = new ComboBox<>();
    private final FormView view = new FormView(this::typed);
    private final TextField place = new TextField();
    private final Label problem = SlipView.text("", "message");
    private final Map<ReadingValue, String> texts = new EnumMap<>(ReadingValue.class);
    private boolean open;
    private @Nullable Spot from;
    private String last = "";

    public HandReading(Workbench bench, PlanPane plan) {
        this.bench = bench;
        this.plan = plan;
        attempts = new Attempts(() -> bench.survey().orElseThrow(), bench::edit);
        kinds.setId("hand-kind");
        kinds.setAccessibleText("What was found");
        kinds.setMaxWidth(Double.MAX_VALUE);
        KINDS.forEach(k -> kinds.getItems().add(ReadingForm.word(k)));
        kinds.getSelectionModel().select(0);
        kinds.setOnAction(e -> {
            begin();
            bench.say("");
        });
        place.setId("hand-place");
        place.setAccessibleText("Its place, typed");
        place.setOnAction(e -> at(place.getText()));
        problem.setId("hand-problem");
    }

    /** Readings are noted from now on. */
    public void open() {
        open = true;
        bench.sight().go(Step.READINGS);
        begin();
        plan.giveTo(this);
        bench.say("");
    }

    private Reading.Kind kind() {
        return KINDS.get(Math.max(0, kinds.getSelectionModel().getSelectedIndex()));
    }

    private void begin() {
        texts.clear();
        from = null;
        last = "";
        bench.survey().ifPresent(s -> fields(s, kind()).forEach(f -> {
            if (!f.options().isEmpty()) {
                texts.put(ReadingValue.of(f.id()), f.options().get(0));
            }
        }));
    }

    private boolean typed(String field, String text) {
        texts.put(ReadingValue.of(field), text.strip());
        bench.survey().ifPresent(s -> view.show(fields(s, kind())));
        return true;
    }

    @Override
    public void letGo() {
        if (open) {
            open = false;
            from = null;
            plan.giveTo(null);
        }
    }

    @Override
    public boolean touch(double xMm, double yMm) {
        return false; // as a hand it has the touch before
    }

    @Override
    public Optional<Slip> slip() {
        if (open && bench.sight().step() != Step.READINGS) {
            letGo();
        }
        String touch = kind() != Reading.Kind.FEELER
                ? "Fill in what was found, then touch its place on the plan."
                : from == null
                        ? "Fill in how it ended, then touch where the rod went in."
                        : "Now touch where its tip came to.";
        return !open
                ? Optional.empty()
                : Optional.of(new Slip(
                        "Note one by hand",
                        bench.face(),
                        (last.isEmpty() ? "" : last + " ") + touch,
                        "",
                        null,
                        List.of(),
                        new Slip.Work(List.of(), "", "", List.of())));
    }

    @Override
    public Node[] nodes() {
        Survey survey = bench.survey().orElse(null);
        if (!open || survey == null) {
            return new Node[0];
        }
        view.show(fields(survey, kind()));
        place.setPromptText("or type it, " + bench.sight().units().depthUnit() + ": "
                + (bench.sight().units() == Units.METRIC ? "1200, -655" : "47.2, -25.8") + " or E s2");
        problem.setText(attempts.problem());
        problem.setVisible(!attempts.problem().isEmpty());
        problem.setManaged(problem.isVisible());
        return new Node[] {
            kinds,
            view,
            place,
            problem,
            SlipView.key("hand-done", "Done noting", () -> {
                letGo();
                bench.say("");
            })
        };
    }

    private List<FormField> fields(Survey survey, Reading.Kind kind) {
        Units units = bench.sight().units();
        List<String> meters = survey.meters().stream().map(m -> m.name()).toList();
        return ReadingValue.of(kind).stream()
                .filter(v -> v != ReadingValue.PLACE && v != ReadingValue.TIP)
                .map(v -> new FormField(
                        v.id(),
                        ReadingTexts.label(v, units),
                        texts.getOrDefault(v, ""),
                        ReadingTexts.options(v, meters)))
                .toList();
    }

    /** The place typed. */
    private void at(String text) {
        Survey survey = bench.survey().orElse(null);
        if (survey == null) {
            return;
        }
        try {
            at(TypedPlace.of(survey.face(bench.face()), text, bench.sight().units()));
            place.clear();
            place.requestFocus(); // the next place may follow at once
        } catch (Typed e) {
            bench.say(String.valueOf(e.getMessage()));
        }
    }

    /** The place touched: a feeler has two. */
    private void at(Spot spot) {
        view.requestFocus(); // what is half typed counts
        Spot first = from;
        if (kind() == Reading.Kind.FEELER && first == null) {
            from = spot;
            bench.sight().mark(spot, "rod in");
            return;
        }
        Units units = bench.sight().units();
        Map<ReadingValue, String> all = new EnumMap<>(texts);
        all.put(ReadingValue.PLACE, TypedPlace.text(first == null ? spot : first, units));
        all.put(ReadingValue.TIP, TypedPlace.text(spot, units));
        Reading.Kind kind = kind();
        LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS);
        String face = bench.face();
        String word = ReadingForm.word(kind);
        boolean good = attempts.make(
                "noting a " + word,
                s -> ReadingParts.add(
                        s,
                        new ReadingMaker(s, units, face, all, null)
                                .make(kind, BY_HAND, FreeIds.next(ReadingParts.of(s, kind), prefix(kind)), now)));
        if (good) {
            from = null;
            last = "Noted: a " + word + ".";
            texts.keySet().removeIf(v -> ReadingTexts.options(v, List.of()).isEmpty() && v != ReadingValue.METER);
        }
        bench.say(bench.message());
    }

    private static String prefix(Reading.Kind kind) {
        return switch (kind) {
            case MOISTURE -> "H";
            case TAP -> "HT";
            case PROBE -> "HP";
            case FEELER -> "HF";
            case PLUG -> "HK";
            case TEMPERATURE -> "HW";
        };
    }

    @Override
    public boolean touched(PlanCamera camera, MouseEvent e) {
        at(new Spot(bench.face(), Math.rint(camera.xMm(e.getX())), Math.rint(camera.yMm(e.getY()))));
        return true;
    }
}
