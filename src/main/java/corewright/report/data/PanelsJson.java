package corewright.report.data;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import corewright.report.page.Conversions;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.LooseSkin;
import corewright.sandwich.Margin;
import corewright.stiffness.LoadCase;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import java.util.List;

/** The panels of summary.json. */
public final class PanelsJson {
    private PanelsJson() {}

    static void put(ObjectNode node, PanelStiffness panel) {
        node.put("name", panel.panel().name())
                .put("face", panel.panel().face())
                .put("laminate", panel.panel().laminate().name())
                .put("area_m2", Conversions.squareMetres(panel.panel().area().getArea()))
                .put("damaged", panel.damaged());
        ObjectNode stiffness = node.putObject("stiffness_n_per_mm");
        ObjectNode linear = node.putObject("linear_n_per_mm");
        ObjectNode deflection = node.putObject("deflection_mm");
        ObjectNode ofAsBuilt = node.putObject("of_as_built");
        ObjectNode worst = node.putObject("worst_place");
        for (State state : panel.known()) {
            JsonFile.put(stiffness, state.word(), panel.in(state).stiffnessNPerMm());
            JsonFile.put(linear, state.word(), panel.in(state).linearNPerMm());
            JsonFile.put(deflection, state.word(), panel.in(state).deflectionMm());
            JsonFile.put(ofAsBuilt, state.word(), panel.in(state).ofAsBuilt());
            FootLoadMap.Place place = panel.in(state).feet().softest();
            worst.putObject(state.word())
                    .put("x", place.x())
                    .put("y", place.y())
                    .put("deflection_mm", place.deflectionMm())
                    .put("theory", place.theory().words());
        }
        node.putArray("softest_point")
                .add(panel.softest().xMm())
                .add(panel.softest().yMm());
        panel.looseSkin().ifPresent(l -> looseSkin(node.putObject("loose_skin"), l));
        ArrayNode margins = node.putArray("margins_as_found");
        panel.margins().forEach(m -> margin(margins.addObject(), m));
        ArrayNode cases = node.putArray("load_cases");
        panel.cases().forEach(c -> loadCase(cases.addObject(), c, panel.known()));
        ArrayNode notes = node.putArray("notes");
        panel.notes().forEach(notes::add);
    }

    /** A loose skin that moves against the other, as {@code corewright panel} gives it too. */
    public static void looseSkin(ObjectNode node, LooseSkin loose) {
        node.put("x", loose.x())
                .put("y", loose.y())
                .put("linear_mm", loose.linearMm())
                .put("restrained_mm", loose.restrainedMm())
                .put("gap_mm", loose.gapMm())
                .put("linear_overstates", loose.overstated());
    }

    private static void loadCase(ObjectNode node, LoadCase loadCase, List<State> states) {
        node.put("name", loadCase.name());
        for (State state : states) {
            LoadCase.Answer answer = loadCase.in(state);
            ObjectNode one = node.putObject(state.word());
            JsonFile.put(one, "deflection_mm", answer.deflectionMm());
            JsonFile.put(one, "linear_mm", answer.linearMm());
            one.put("x", answer.at().xMm()).put("y", answer.at().yMm());
            ArrayNode margins = one.putArray("margins");
            answer.margins().forEach(m -> margin(margins.addObject(), m));
        }
    }

    /** A margin with its formula and source. */
    public static void margin(ObjectNode node, Margin margin) {
        node.put("what", margin.what())
                .put("demand_MPa", margin.demandMPa())
                .put("capacity_MPa", margin.capacityMPa())
                .put("ratio", margin.ratio())
                .put("x", margin.x())
                .put("y", margin.y())
                .put("formula", margin.formula())
                .put("source", margin.source());
    }
}
