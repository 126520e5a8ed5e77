package corewright.desktop.holes;

import corewright.desktop.plan.PlanCamera;
import corewright.desktop.plan.PlanPane;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Steps;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.repair.fill.DrawnCavities;
import corewright.repair.pattern.HoleTrial;
import corewright.repair.plan.Batch;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.MovedHole;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/** Holes over the plan: held by mouse, touch or keys; figures in the slip follow while one is held. */
public final class HolesDesk implements PlanPane.Hand {
    private static final double REACH_PX = 24;

    private final Workbench bench;
    private final PlanPane plan;
    private final Runnable tell;
    private final HolesModel model;
    private final HoleKeys keys;
    private final HolesOverlay overlay;
    private final Slider clock = new Slider(0, 1, 1);
    private final Label minute = SlipView.text("", "quiet");
    private final HBox cavities = new HBox(8);
    private boolean open;
    private MovedHole.@Nullable Kind addNext;

    public HolesDesk(Workbench bench, PlanPane plan, Runnable tell) {
        this.bench = bench;
        this.plan = plan;
        this.tell = tell;
        model = new HolesModel(bench, tell);
        keys = new HoleKeys(bench, model);
        overlay = new HolesOverlay(bench, model, this::fillS);
        clock.setId("fill-clock");
        clock.setAccessibleText("The fill, from the first cup to its end");
        clock.setMinHeight(40);
        clock.valueProperty().addListener(o -> {
            time();
            plan.refresh();
        });
    }

    public HolesModel model() {
        return model;
    }

    /** Whether the holes are in hand. */
    public boolean isOpen() {
        return open;
    }

    /** Opens the holes of the region selected, the plan close about it. */
    public void open() {
        model.follow();
        InjectionPlan of = model.plan().orElse(null);
        if (of == null) {
            return;
        }
        open = true;
        addNext = null;
        plan.giveTo(this);
        plan.over(overlay);
        bench.region().ifPresent(r -> plan.look(r.possible().getEnvelopeInternal()));
        tell.run();
    }

    /** Back to what the plan shows else. */
    public void close() {
        if (open) {
            open = false;
            model.putBack();
            plan.giveTo(null);
            plan.lift(overlay);
            plan.fit();
        }
    }

    /** The plan may have been made anew, or be gone. */
    public void follow() {
        model.follow();
        if (model.plan().isEmpty() && bench.fresh()) {
            close();
        }
        plan.refresh();
    }

    private double fillS() {
        return model.fill()
                .arrivalS()
                .map(r -> clock.getValue() >= 0.999 ? Double.POSITIVE_INFINITY : clock.getValue() * overlay.endS(r))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private void time() {
        double s = fillS();
        if (model.fill().arrivalS().isEmpty()) {
            minute.setText("This fill is being worked out.");
            return;
        }
        minute.setText(
                Double.isInfinite(s)
                        ? hundredths(model.fill().emptyShare())
                                + " of 100 parts stay empty at the end. Draw the knob back to see"
                                + " how the mix comes."
                        : Figures.fixed(s / 60, 1) + " minutes after the first cup: what is tinted has mix.");
    }

    /** The small and the large cavity take the same cups; into the large one goes what is held back besides. */
    private void sizes(InjectionPlan of) {
        Units units = bench.sight().units();
        cavities.getChildren().clear();
        for (DrawnCavities.Size size : DrawnCavities.Size.values()) {
            double mm3 =
                    switch (size) {
                        case SMALL -> of.cavityMm3().p10();
                        case MIDDLE -> of.cavityMm3().p50();
                        case LARGE -> of.cavityMm3().p90();
                    };
            String word = size.name().toLowerCase(Locale.ROOT);
            Button key = SlipView.key("fill-" + word, Figures.fixed(units.volume(mm3), 2), () -> model.fill()
                    .play(size));
            key.setAccessibleText("The fill of the " + word + " cavity, " + Figures.fixed(units.volume(mm3), 2) + " "
                    + units.volumeUnit());
            key.setText(word + "\n" + Figures.fixed(units.volume(mm3), 2) + " " + (units == Units.METRIC ? "l" : "qt"));
            key.setTextAlignment(TextAlignment.CENTER);
            HBox.setHgrow(key, Priority.ALWAYS);
            if (size == model.fill().size()) {
                key.getStyleClass().add("chosen");
            }
            cavities.getChildren().add(key);
        }
    }

    // --- the slip ----------------------------------------------------------------------------------------------------

    public Node[] actions() {
        InjectionPlan of = model.plan().orElse(null);
        if (of == null) {
            return new Node[] {SlipView.text("The plan follows when the calculation is through.", "sentence")};
        }
        List<Node> all = new ArrayList<>();
        figures(of, all);
        if (model.heldAt().isPresent()) {
            held(of, all);
        } else {
            free(all);
        }
        if (of.fill().simulated()) {
            all.add(SlipView.text("The fill", "head"));
            sizes(of);
            all.add(cavities);
            all.add(clock);
            time();
            all.add(minute);
        }
        all.add(SlipView.key("holes-done", "Done with the holes", () -> {
            close();
            tell.run();
        }));
        return all.toArray(Node[]::new);
    }

    /** What can be done while nothing is held. */
    private void free(List<Node> all) {
        MovedHole.Kind next = addNext;
        if (next != null) {
            all.add(SlipView.text(
                    "Touch the place of the new " + (next == MovedHole.Kind.VENT ? "vent." : "hole."), "quiet"));
            all.add(SlipView.key("hole-none", "Add none", () -> addNext(null)));
            return;
        }
        all.add(SlipView.text(
                bench.sight()
                        .units()
                        .measure()
                        .say(
                                "Touch a hole or vent and drag it, or move it with the arrow keys, 5 mm each, 25 mm with Shift."),
                "quiet"));
        HBox adds = new HBox(
                8,
                SlipView.key("hole-add", "Add a hole", () -> addNext(MovedHole.Kind.HOLE)),
                SlipView.key("vent-add", "Add a vent", () -> addNext(MovedHole.Kind.VENT)));
        adds.getChildren().forEach(n -> HBox.setHgrow(n, Priority.ALWAYS));
        all.add(adds);
        if (model.byHand(false)) {
            all.add(SlipView.key("hole-fewest", "Fewest holes, none by hand", model::fewest));
        }
        if (model.byHand(true)) {
            all.add(SlipView.key("vents-planned", "Vents as planned, none by hand", model::ventsAsPlanned));
        }
    }

    private void addNext(MovedHole.@Nullable Kind kind) {
        addNext = kind;
        tell.run();
    }

    private void figures(InjectionPlan of, List<Node> all) {
        Units units = bench.sight().units();
        all.add(SlipView.text(
                Figures.fixed(units.volume(of.cavityMm3().p50()), 2) + " " + units.volumeUnit() + " to fill"
                        + beside(of)
                        + ", "
                        + Figures.fixed(units.volume(of.cavityMm3().p10()), 2) + " to "
                        + Figures.fixed(units.volume(of.cavityMm3().p90()), 2),
                "head"));
        double covered = model.now().map(HoleTrial.Result::covered).orElse(of.coveredFraction());
        double was = model.before().map(HoleTrial.Result::covered).orElse(covered);
        Label reached = SlipView.text(
                hundredths(covered) + " of 100 reached" + (model.moved() ? "; was " + hundredths(was) : ""), "head");
        reached.setId("holes-reached");
        all.add(reached);
        long injections = of.count(Hole.Kind.INJECTION);
        all.add(SlipView.text(
                Steps.counted(injections, "hole") + " and " + Steps.counted(of.count(Hole.Kind.VENT), "vent") + "; "
                        + Figures.fixed(of.resinG() + of.hardenerG(), 0) + " g mix in "
                        + Steps.counted(
                                of.batches().stream()
                                        .map(Batch::number)
                                        .distinct()
                                        .count(),
                                "cup")
                        + (of.outlook().heldLikelyG() < 0.5
                                ? ""
                                : " and " + Figures.fixed(of.outlook().heldLikelyG(), 0) + " g held back")
                        + ", buy for "
                        + Figures.fixed(of.buyG(), 0) + " g" + (model.moved() ? "; counted anew when kept." : "."),
                "sentence"));
    }

    /** Other regions of the same space, whose litres are among them. */
    private String beside(InjectionPlan of) {
        String here = bench.region().map(r -> r.id()).orElse("");
        String others = of.parts().stream()
                .map(InjectionPlan.Part::region)
                .filter(id -> !id.equals(here))
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : " with " + others;
    }

    private static String hundredths(double share) {
        return Figures.fixed(Math.floor(1000 * share + 1e-6) / 10, 1);
    }

    private void held(InjectionPlan of, List<Node> all) {
        Units units = bench.sight().units();
        Spot at = model.heldAt().orElseThrow();
        String kind = model.ofVents() ? "vent" : "hole";
        String name = model.held()
                .map(h -> (h.fills() ? "Hole " : "Vent ") + Figures.holeNumber(h.id()))
                .orElse("A new " + kind);
        PlaceNames names = PlaceNames.of(bench.survey().orElseThrow().face(at.face()));
        all.add(SlipView.text(name + ", held", "head"));
        all.add(SlipView.text(names.measured(at.xMm(), at.yMm(), units::place), "sentence"));
        if (!model.ofVents()) {
            double grams = model.heldMm3() / Math.max(1, of.cavityMm3().p50()) * (of.resinG() + of.hardenerG());
            all.add(SlipView.text(
                    "takes " + Figures.fixed(units.volume(model.heldMm3()), 2) + " " + units.volumeUnit() + ", some "
                            + Figures.fixed(grams, 0) + " g",
                    "sentence"));
        }
        model.held()
                .filter(h -> !model.moved())
                .ifPresent(h -> all.add(SlipView.text("depth stop " + units.depth(h.depthStopMm()), "sentence")));
        String warning = warning(names, units);
        if (!warning.isEmpty()) {
            Label label = SlipView.text("! " + warning, "message");
            label.setId("holes-warning");
            all.add(label);
        }
        if (model.moved()) {
            all.add(SlipView.key("hole-back", model.adding() ? "No " + kind + " here" : "Put it back", () -> {
                addNext = null;
                model.putBack();
                tell.run();
            }));
            if (model.allowed()) {
                all.add(SlipView.key("hole-keep", "Keep it here", () -> {
                    addNext = null;
                    model.keep();
                }));
            }
        } else {
            boolean locked = model.held().filter(model::locked).isPresent();
            if (!locked) {
                all.add(SlipView.key("hole-lock", "Hold it in place", model::lock));
            } else if (!model.ofVents()) {
                all.add(SlipView.key("hole-release", "Leave it to the plan", model::release));
            }
            all.add(SlipView.key("hole-remove", "Take this " + kind + " away", model::remove));
        }
    }

    private String warning(PlaceNames names, Units units) {
        if (!model.allowed()) {
            return "Nothing may be drilled there: too near a fitting, a support or the region's edge.";
        }
        HoleTrial.Result now = model.now().orElse(null);
        HoleTrial.Result before = model.before().orElse(null);
        if (now == null || before == null || now.out().size() <= before.out().size()) {
            return "";
        }
        Coordinate out = now.outAt();
        return out == null
                ? ""
                : "Out of reach about " + names.measured(out.x, out.y, units::place) + ": " + units.dash(now.outMm3())
                        + " would stay empty. Put it back, or add a hole.";
    }

    // --- the hand ----------------------------------------------------------------------------------------------------

    @Override
    public boolean pressed(PlanCamera camera, MouseEvent e) {
        double reach = REACH_PX * camera.mmPerPx();
        boolean taken = model.grasp(camera.xMm(e.getX()), camera.yMm(e.getY()), reach);
        if (taken) {
            tell.run();
        }
        return taken;
    }

    @Override
    public void dragged(PlanCamera camera, MouseEvent e) {
        model.move(camera.xMm(e.getX()), camera.yMm(e.getY()));
        plan.refresh();
    }

    @Override
    public void released(PlanCamera camera, MouseEvent e) {
        tell.run();
    }

    @Override
    public boolean touched(PlanCamera camera, MouseEvent e) {
        MovedHole.Kind next = addNext;
        if (next != null) {
            model.add(next, camera.xMm(e.getX()), camera.yMm(e.getY()));
            tell.run();
        } else if (model.heldAt().isPresent() && !model.moved()) {
            model.putBack();
            tell.run();
        }
        return true;
    }

    /** Whether a key was meant for the holes. */
    public boolean key(KeyEvent e) {
        boolean done = open && keys.pressed(e);
        if (done) {
            addNext = model.adding() ? null : addNext;
            tell.run();
        }
        return done;
    }
}
