package corewright.desktop.touch;

import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.Held;
import corewright.desktop.slip.Slip;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Attempts;
import corewright.desktop.state.Step;
import corewright.desktop.state.Typed;
import corewright.desktop.state.Workbench;
import corewright.survey.Feature;
import corewright.survey.Reading;
import corewright.survey.ReadingOverride;
import corewright.survey.ReadingOverride.Trust;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;

/** A reading or a feature that is touched: read, corrected, judged, taken away, each by an edit that one key takes back. */
public final class TouchDesk implements Held {
    /** A finding names its reading's own place. */
    private static final double SAME_MM = 0.5;

    private final Workbench bench;
    private final PlanPane plan;
    private final Attempts attempts;
    private final FormView view = new FormView(this::set);
    private final Label problem = SlipView.text("", "message");
    private final TextField reason = new TextField();
    private final Button trust = SlipView.key("judge-trust", "Trust it", () -> {});
    private final Button aside = SlipView.key("judge-aside", "Set it aside", () -> {});
    private final HBox judging = new HBox(8, trust, aside);
    private final Button away = SlipView.key("take-away", "Take it away", () -> {});
    private final Button done = SlipView.key("let-go", "Done with it", this::done);
    private final HBox leaving = new HBox(8, done, away);

    /** One thing as it was, from edit to edit; the newest that the survey has is the one held. */
    private final List<Form> versions = new ArrayList<>();

    private List<Reading> here = List.of();
    private @Nullable Step taken;

    public TouchDesk(Workbench bench, PlanPane plan) {
        this.bench = bench;
        this.plan = plan;
        attempts = new Attempts(() -> bench.survey().orElseThrow(), bench::edit);
        problem.setId("form-problem");
        List.of(trust, aside, away, done).forEach(k -> HBox.setHgrow(k, Priority.ALWAYS));
        reason.setId("judge-why");
        reason.setPromptText("why, in your words");
        reason.setAccessibleText("Why this reading is trusted or set aside");
    }

    /** Takes up a reading. */
    public void open(Reading reading) {
        here = bench.survey()
                .map(s -> Nearby.readings(s, reading.spot(), bench.sight().layers()))
                .orElse(List.of());
        open(new ReadingForm(reading, bench.sight().units(), bench.findings()));
    }

    /** Takes up what is drawn on the face shown. */
    public void open(Feature feature) {
        here = List.of();
        open(new FeatureForm(bench.face(), feature, bench.sight().units()));
    }

    private void open(Form form) {
        versions.clear();
        versions.add(form);
        view.anew();
        taken = bench.sight().step();
        reason.clear();
        problem.setText("");
        bench.sight().mark(form.spot(), "");
    }

    private void done() {
        letGo();
        bench.say("");
    }

    @Override
    public void letGo() {
        versions.clear();
        here = List.of();
        taken = null;
    }

    @Override
    public boolean touch(double xMm, double yMm) {
        letGo();
        Survey survey = bench.survey().orElse(null);
        if (survey == null) {
            return false;
        }
        Spot at = new Spot(bench.face(), xMm, yMm);
        double reachMm = Nearby.REACH_PX * plan.camera().mmPerPx();
        switch (bench.sight().step()) {
            case PLAN -> Nearby.feature(survey, at, reachMm).ifPresent(this::open);
            case READINGS ->
                Nearby.reading(survey, at, reachMm, bench.sight().layers()).ifPresent(this::open);
            case DAMAGE -> {
                if (regionIsHeld(at)) {
                    Nearby.reading(survey, at, reachMm / 2, bench.sight().layers())
                            .ifPresent(this::open);
                }
            }
            default -> {
                return false;
            }
        }
        return !versions.isEmpty();
    }

    /** A first touch on the map is meant for the region, the next for what lies in it. */
    private boolean regionIsHeld(Spot at) {
        return bench.region()
                .filter(r -> r.face().equals(at.face())
                        && r.likely().covers(r.likely().getFactory().createPoint(at.coordinate())))
                .isPresent();
    }

    /** Takes up the reading that a finding speaks of, in the step of readings. */
    public void openAt(Spot spot) {
        if (bench.sight().step() == Step.READINGS) {
            bench.survey()
                    .flatMap(s -> Nearby.reading(s, spot, SAME_MM, bench.sight().layers()))
                    .ifPresent(r -> {
                        open(r);
                        bench.say("");
                    });
        }
    }

    /** What is held, as the survey has it now. */
    private Optional<Form> held() {
        Survey survey = bench.survey().orElse(null);
        if (taken != bench.sight().step() || survey == null) {
            letGo();
            return Optional.empty();
        }
        for (int i = versions.size() - 1; i >= 0; i--) {
            if (versions.get(i).in(survey)) {
                return Optional.of(versions.get(i));
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Slip> slip() {
        return held().map(this::fresh).map(f -> f.slip(bench.survey().orElseThrow()));
    }

    /** What is said of a reading, and in which units, may have changed since it was taken up. */
    private Form fresh(Form form) {
        return form instanceof ReadingForm r
                ? new ReadingForm(r.reading(), bench.sight().units(), bench.findings())
                : form instanceof FeatureForm f
                        ? new FeatureForm(f.face(), f.feature(), bench.sight().units())
                        : form;
    }

    @Override
    public Node[] nodes() {
        Form form = held().map(this::fresh).orElse(null);
        if (form == null) {
            return new Node[0];
        }
        Survey survey = bench.survey().orElseThrow();
        view.show(form.fields(survey));
        problem.setText(attempts.problem());
        problem.setVisible(!attempts.problem().isEmpty());
        problem.setManaged(problem.isVisible());
        List<Node> all = new ArrayList<>();
        if (form instanceof ReadingForm r) {
            judging(survey, r.reading(), all);
        }
        all.add(SlipView.text(form instanceof ReadingForm ? "What was noted" : "What it is", "head"));
        all.add(view);
        all.add(problem);
        away.setOnAction(
                e -> bench.edit("taking away " + form.called(survey), s -> form.in(s) ? form.removed(s) : null));
        all.add(leaving);
        alsoHere(form, all);
        return all.toArray(Node[]::new);
    }

    private void judging(Survey survey, Reading reading, List<Node> all) {
        Optional<ReadingOverride> judged = ReadingParts.judgement(survey, reading);
        if (judged.isPresent()) {
            all.add(SlipView.key(
                    "judge-none",
                    "As the program has it",
                    () -> bench.edit(
                            "leaving " + reading.id() + " to the program", s -> ReadingParts.unjudged(s, reading))));
            return;
        }
        trust.setOnAction(e -> judge(reading, Trust.TRUSTED));
        aside.setOnAction(e -> judge(reading, Trust.SET_ASIDE));
        all.add(reason);
        all.add(judging);
    }

    /** Setting aside needs a reason: a reader of the record will ask for it. */
    private void judge(Reading reading, Trust trust) {
        String why = reason.getText().strip();
        if (why.isEmpty()) {
            bench.say("Say why first: it goes into the record.");
            reason.requestFocus();
            return;
        }
        bench.edit(
                (trust == Trust.TRUSTED ? "trusting " : "setting aside ") + reading.id(),
                s -> ReadingParts.holds(s, reading) ? ReadingParts.judged(s, reading, trust, why) : null);
    }

    /** Readings share places: a walk notes moisture and tap together. */
    private void alsoHere(Form form, List<Node> all) {
        for (Reading other : here) {
            if (form instanceof ReadingForm r
                    && !other.key().equals(r.reading().key())
                    && bench.survey().filter(s -> ReadingParts.holds(s, other)).isPresent()) {
                String name = ReadingForm.word(other.key().kind()) + " " + other.id();
                all.add(SlipView.key(
                        "also-" + other.key().kind().name().toLowerCase(java.util.Locale.ROOT),
                        "Also here: " + name,
                        () -> {
                            open(new ReadingForm(other, bench.sight().units(), bench.findings()));
                            bench.say("");
                        }));
            }
        }
    }

    private boolean set(String field, String text) {
        Form form = held().map(this::fresh).orElse(null);
        if (form == null) {
            return true;
        }
        Survey survey = bench.survey().orElseThrow();
        Optional<Form> next = next(form, survey, field, text);
        boolean good = attempts.make(field + " of " + form.called(survey), s -> {
            Form.Changed changed = form.in(s) ? form.changed(s, field, text) : null;
            return changed == null ? null : changed.edit();
        });
        next.ifPresent(versions::add);
        bench.say(bench.message());
        return good;
    }

    /** The thing as it will be known after a change; empty where there is none, or where the text will not do. */
    private static Optional<Form> next(Form form, Survey survey, String field, String text) {
        try {
            return Optional.ofNullable(form.changed(survey, field, text)).map(Form.Changed::now);
        } catch (Typed e) {
            return Optional.empty();
        }
    }
}
