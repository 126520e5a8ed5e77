package corewright.stiffness;

import corewright.sandwich.CellMatrices;
import corewright.sandwich.FootLoadMap;
import corewright.sandwich.PanelModel;
import corewright.sandwich.Theory;
import corewright.sandwich.spec.PanelSpec;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** How far a panel gives way under a foot at one place, with contact and von Karman's strain. */
record Sink(PanelSpec panel, double xMm, double yMm) {
    Sink(PanelSpec panel, Coordinate place) {
        this(panel, place.x, place.y);
    }

    /** @param cells of panels with the same skins and thickness of core */
    double mm(CellMatrices cells) {
        PanelModel model = PanelModel.forDeflections(panel, StudyMesh.of(panel), cells);
        return FootLoadMap.at(model, List.of(new Coordinate(xMm, yMm)), Theory.LARGE)
                .softest()
                .deflectionMm();
    }
}
