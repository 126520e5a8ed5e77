package corewright.desktop.stiffness;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.plates.FootGive;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.stiffness.LoadCase;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Which panel is looked at and where the foot stands. Knows no window. */
public final class StiffnessModel {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /**
     * A state in figures.
     *
     * @param gives under the foot, with its unit
     * @param ofBuilt stiffness there, 100 as built
     * @param range of it in 8 cases of 10, empty but at the softest place
     */
    public record Row(State state, String name, String gives, String ofBuilt, String range) {}

    private final Workbench bench;
    private String chosen = "";
    private @Nullable Spot foot;

    public StiffnessModel(Workbench bench) {
        this.bench = bench;
    }

    /** Panels of the face shown; those before the last change are shown too, and marked. */
    public List<PanelStiffness> panels() {
        return bench.found().map(a -> a.stiffness().of(bench.face())).orElse(List.of());
    }

    /** The panel looked at: the one chosen, else the damaged one that kept least, else the first. */
    public Optional<PanelStiffness> panel() {
        List<PanelStiffness> all = panels();
        Optional<PanelStiffness> named =
                all.stream().filter(p -> p.panel().name().equals(chosen)).findFirst();
        Optional<PanelStiffness> worst =
                bench.found().flatMap((Assessment a) -> a.stiffness().worst(bench.face()));
        return named.or(() -> worst).or(() -> all.stream().findFirst());
    }

    public void choose(String name) {
        chosen = name;
        foot = null;
    }

    /** The panel under a place of the plan; stays where there is none. */
    public boolean chooseAt(double xMm, double yMm) {
        Optional<PanelStiffness> there = panels().stream()
                .filter(p -> p.panel().area().covers(FACTORY.createPoint(new Coordinate(xMm, yMm))))
                .findFirst();
        there.ifPresent(p -> choose(p.panel().name()));
        return there.isPresent();
    }

    /** Sets the foot down; false where the panel is not. */
    public boolean press(double xMm, double yMm) {
        boolean on = panel().filter(p -> p.panel().area().covers(FACTORY.createPoint(new Coordinate(xMm, yMm))))
                .isPresent();
        if (on) {
            foot = new Spot(bench.face(), xMm, yMm);
        }
        return on;
    }

    /** Takes the foot back to the softest place. */
    public void lift() {
        foot = null;
    }

    /** Where the foot stands, empty at the softest place. */
    public Optional<Spot> foot() {
        return Optional.ofNullable(foot).filter(f -> f.face().equals(bench.face()) && panel().isPresent());
    }

    /** Every state with figures, in order; of an undamaged panel the one as built. */
    public static List<State> states(PanelStiffness panel) {
        return panel.damaged() ? panel.known() : List.of(State.AS_BUILT);
    }

    public static String word(State state) {
        return switch (state) {
            case AS_BUILT -> "As built";
            case AS_FOUND -> "As found";
            case AFTER_INJECTION -> "After injection";
            case AFTER_RECORE -> "After new core everywhere";
            case AFTER_PLAN -> "After the advised plan";
        };
    }

    /** What the panel gives in a state under the foot, millimetres. */
    public double givesMm(PanelStiffness panel, State state) {
        return foot().map(f -> new FootGive(panel.in(state).feet()).at(f.xMm(), f.yMm()))
                .orElse(panel.in(state).deflectionMm());
    }

    public List<Row> rows(PanelStiffness panel) {
        Units units = bench.sight().units();
        double built = givesMm(panel, State.AS_BUILT);
        List<Row> rows = new ArrayList<>();
        for (State state : states(panel)) {
            double mm = givesMm(panel, state);
            Quantiles q = panel.in(state).ofAsBuilt();
            boolean spread = foot().isEmpty() && 100 * (q.p90() - q.p10()) >= 1;
            rows.add(new Row(
                    state,
                    word(state),
                    units.measure().deflectionFigure(mm) + " " + units.depthUnit(),
                    Figures.fixed(100 * built / mm, 0),
                    spread ? hundredths(q.p10()) + " to " + hundredths(q.p90()) : ""));
        }
        return rows;
    }

    private static String hundredths(double share) {
        return Figures.fixed(100 * share, 0);
    }

    /** What one of the survey's loads does to a panel, a line a state. */
    public record Load(String name, List<Line> lines) {
        /** What gives, and how much of its strength is taken. */
        public record Line(String state, String answer) {}

        public Load {
            lines = List.copyOf(lines);
        }
    }

    /** The survey's loads on the panel, as built, as found and planned. */
    public List<Load> loads(PanelStiffness panel) {
        Units units = bench.sight().units();
        List<Load> all = new ArrayList<>();
        for (LoadCase loads : panel.cases()) {
            List<Load.Line> lines = new ArrayList<>();
            for (State state : List.of(State.AS_BUILT, State.AS_FOUND, State.AFTER_PLAN)) {
                if (loads.states().containsKey(state)) {
                    LoadCase.Answer answer = loads.in(state);
                    lines.add(new Load.Line(
                            word(state),
                            units.measure().deflectionFigure(answer.deflectionMm()) + " " + units.depthUnit()
                                    + taken(answer)));
                }
            }
            all.add(new Load(loads.name(), lines));
        }
        return all;
    }

    /** A loose skin may buckle and still hold: it is told apart. */
    private static String taken(LoadCase.Answer answer) {
        boolean buckles =
                answer.margins().stream().anyMatch(m -> m.what().equals(Margins.LOOSE_SKIN_BUCKLING) && m.ratio() > 1);
        return answer.margins().stream()
                        .filter(m -> !m.what().equals(Margins.LOOSE_SKIN_BUCKLING))
                        .max(Comparator.comparingDouble(Margin::ratio))
                        .map(m ->
                                ", " + Figures.fixed(100 * m.ratio(), 0) + " of 100 of its strength (" + m.what() + ")")
                        .orElse("")
                + (buckles ? ", the loose skin buckles" : "");
    }
}
