package corewright.stiffness;

import corewright.sandwich.FootLoadMap;
import corewright.sandwich.MeshSize;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * One mesh for states of a panel that differ little, with the outlines of the patches of all. It is coarse, which serves for ratios of linear
 * deflections.
 *
 * @param rims patches of the first state's core
 */
record CoarseMesh(List<Patch> rims) {
    /**
     * Elements so much larger than those of the figures themselves. On the demo's worst panel ratios are within 0.0006 of those by the
     * fine mesh, for a fourth of the time.
     */
    private static final double COARSER = 2;

    CoarseMesh(Iterable<PanelSpec> states) {
        this(rims(states));
    }

    private static List<Patch> rims(Iterable<PanelSpec> states) {
        List<Patch> rims = new ArrayList<>();
        for (PanelSpec state : states) {
            for (Patch patch : state.patches()) {
                if (rims.stream().noneMatch(rim -> rim.area().equals(patch.area()))) {
                    rims.add(new Patch.Core(patch.area(), state.core().material()));
                }
            }
        }
        return List.copyOf(rims);
    }

    /** The linear deflection under a foot. */
    double mm(PanelSpec state, Coordinate foot) {
        List<Patch> patches = new ArrayList<>(rims);
        patches.addAll(state.patches());
        PanelSpec meshed = state.with(patches);
        MeshSize size = MeshSize.uniform(COARSER * StudyMesh.of(state).generalMm());
        return FootLoadMap.at(PanelModel.forDeflections(meshed, size), List.of(foot), Theory.LINEAR)
                .softest()
                .deflectionMm();
    }
}
