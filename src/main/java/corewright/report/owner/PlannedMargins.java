package corewright.report.owner;

import corewright.drawing.kit.Figures;
import corewright.report.page.Prose;
import corewright.sandwich.Margin;
import corewright.sandwich.Margins;
import corewright.stiffness.LoadCase;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.survey.Face;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;

/** How much of what a panel holds the survey's loads take once it is repaired as advised. */
final class PlannedMargins {
    private PlannedMargins() {}

    /** A margin under a load. */
    private record Taken(String load, Margin margin) {}

    /** Sentences with a space after each; empty without loads. */
    static String words(Face face, PanelStiffness panel) {
        Optional<Taken> most = most(panel, m -> !m.what().equals(Margins.LOOSE_SKIN_BUCKLING));
        Optional<Taken> bond = most(panel, m -> m.what().startsWith("repair bond"));
        return most.map(t -> "After what is advised, the load “" + Prose.plain(t.load())
                                + "” takes the most of what the"
                                + " panel holds: " + share(t.margin()) + " of 100 ("
                                + t.margin().what() + "), "
                                + place(face, t.margin()) + ". ")
                        .orElse("")
                + bond.map(t -> "Of the repair’s bond the loads take at most " + share(t.margin()) + " of 100, "
                                + place(face, t.margin()) + ". ")
                        .orElse("")
                + most.map(t -> "No safety factor is in these. ").orElse("");
    }

    private static Optional<Taken> most(PanelStiffness panel, Predicate<Margin> which) {
        return panel.cases().stream()
                .filter(c -> c.states().containsKey(State.AFTER_PLAN))
                .flatMap(c -> planned(c).margins().stream().map(m -> new Taken(c.name(), m)))
                .filter(t -> which.test(t.margin()))
                .max(Comparator.comparingDouble(t -> t.margin().ratio()));
    }

    private static LoadCase.Answer planned(LoadCase loadCase) {
        return loadCase.in(State.AFTER_PLAN);
    }

    private static String share(Margin margin) {
        double of100 = 100 * margin.ratio();
        return of100 < 1 ? "less than 1" : Figures.fixed(of100, 0);
    }

    private static String place(Face face, Margin margin) {
        return "at "
                + PlaceWords.byFigures(
                        face, face.outline().getFactory().createPoint(new Coordinate(margin.x(), margin.y())));
    }
}
