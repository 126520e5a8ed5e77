package corewright.stiffness;

import corewright.damage.FaceDamage;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;

/** How much stiffer or softer one panel is where one thing is otherwise: ratios of linear deflections under a foot. */
final class Sway {
    /**
     * Elements so much larger than those of the figures themselves. On the demo's worst panel ratios are within 0.0006 of those by the
     * fine mesh, for a fourth of the time.
     */
    private static final double COARSER = 2;

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
        middleMm = mm(middle, rims(List.of(middle)));
    }

    /** Stiffness over the middle one at both ends of a range; empty where nothing of the panel hangs on it. */
    Optional<Ends> of(Doubt doubt) {
        PanelSpec low = panel.apply(Outlook.only(doubt, false, face));
        PanelSpec high = panel.apply(Outlook.only(doubt, true, face));
        if (low.equals(middle) && high.equals(middle)) {
            return Optional.empty();
        }
        List<Patch> rims = rims(List.of(low, middle, high));
        double mm = rims.equals(rims(List.of(middle))) ? middleMm : mm(middle, rims);
        return Optional.of(new Ends(mm / mm(low, rims), mm / mm(high, rims)));
    }

    /** All outlines of all three, so that all have one mesh. */
    private List<Patch> rims(List<PanelSpec> specs) {
        return specs.stream()
                .flatMap(s -> s.patches().stream())
                .map(Patch::area)
                .distinct()
                .<Patch>map(area -> new Patch.Core(area, middle.core().material()))
                .toList();
    }

    private double mm(PanelSpec spec, List<Patch> rims) {
        List<Patch> patches = new ArrayList<>(rims);
        patches.addAll(spec.patches());
        PanelSpec meshed = spec.with(patches);
        MeshSize size = MeshSize.uniform(COARSER * StudyMesh.of(spec).generalMm());
        return FootLoadMap.at(PanelModel.forDeflections(meshed, size), List.of(foot), Theory.LINEAR)
                .softest()
                .deflectionMm();
    }
}
