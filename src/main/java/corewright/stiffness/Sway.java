package corewright.stiffness;

import corewright.damage.FaceDamage;
import corewright.sandwich.spec.PanelSpec;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;

/** How much stiffer or softer one panel is where one thing is otherwise: ratios of linear deflections under a foot. */
final class Sway {
    private final Function<Outlook, PanelSpec> panel;
    private final FaceDamage face;
    private final Coordinate foot;
    private final PanelSpec middle;
    private final double middleMm;

    /** @param panel by how bad things truly are */
    Sway(Function<Outlook, PanelSpec> panel, FaceDamage face, Coordinate foot) {
        this.panel = panel;
        this.face = face;
        this.foot = foot;
        middle = panel.apply(Outlook.MIDDLE);
        middleMm = new CoarseMesh(List.of(middle)).mm(middle, foot);
    }

    /** Stiffness over the middle one at both ends of a range; empty where nothing of the panel hangs on it. */
    Optional<Ends> of(Doubt doubt) {
        PanelSpec low = panel.apply(Outlook.only(doubt, false, face));
        PanelSpec high = panel.apply(Outlook.only(doubt, true, face));
        if (low.equals(middle) && high.equals(middle)) {
            return Optional.empty();
        }
        CoarseMesh mesh = new CoarseMesh(List.of(low, middle, high));
        double mm = mesh.equals(new CoarseMesh(List.of(middle))) ? middleMm : mesh.mm(middle, foot);
        return Optional.of(new Ends(mm / mesh.mm(low, foot), mm / mesh.mm(high, foot)));
    }
}
