package corewright.cli;

import corewright.cli.PanelFile.CoreEntry;
import corewright.cli.PanelFile.LoadEntry;
import corewright.cli.PanelFile.PatchEntry;
import corewright.cli.PanelFile.SkinEntry;
import corewright.sandwich.CoreMaterial;
import corewright.sandwich.Load;
import corewright.sandwich.PanelSpec;
import corewright.sandwich.Patch;
import corewright.sandwich.Skin;
import corewright.sandwich.Strengths;
import corewright.sandwich.Support;
import corewright.survey.EdgeSupport;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** From what a panel file says to what the calculation takes. */
final class PanelWords {
    private PanelWords() {}

    static PanelSpec panel(PanelFile file) {
        return new PanelSpec(
                file.outline(),
                file.edges().stream().map(PanelWords::support).toList(),
                support(file.openings()),
                skin(file.build().outer()),
                skin(file.build().inner()),
                new PanelSpec.Core(file.build().coreMm(), core(file.build().core())),
                file.patches().stream().map(PanelWords::patch).toList());
    }

    static List<Load> loads(PanelFile file) {
        return file.loads().stream().map(PanelWords::load).toList();
    }

    static Strengths strengths(PanelFile file) {
        return new Strengths(
                file.build().outer().strengthMPa(),
                file.build().inner().strengthMPa(),
                file.build().core().strength().shearMPa(),
                file.build().core().strength().crushMPa(),
                new Strengths.Bond(file.bond().shearMPa(), file.bond().peelMPa()));
    }

    private static Support support(EdgeSupport edge) {
        return switch (edge) {
            case SIMPLE -> Support.SIMPLE;
            case SIMPLE_HARD -> Support.SIMPLE_HARD;
            case CLAMPED -> Support.CLAMPED;
            case FREE -> Support.FREE;
        };
    }

    private static Skin skin(SkinEntry s) {
        return new Skin(s.thicknessMm(), s.exMPa(), s.eyMPa(), s.nuXy(), s.gxyMPa());
    }

    private static CoreMaterial core(CoreEntry c) {
        return new CoreMaterial(
                c.gxzMPa(),
                c.gyzMPa(),
                c.ezMPa(),
                c.inPlane().map(p -> new CoreMaterial.InPlane(p.exMPa(), p.eyMPa(), p.nuXy(), p.gxyMPa())));
    }

    private static Patch patch(PatchEntry p) {
        return p.core()
                .<Patch>map(c -> new Patch.Core(p.area(), core(c)))
                .orElseGet(() -> new Patch.Loose(p.area(), p.voidDepthMm().orElseThrow()));
    }

    private static Load load(LoadEntry l) {
        return switch (l.kind()) {
            case PRESSURE -> new Load.Pressure(l.amount());
            case FORCE -> new Load.Force(area(l), l.amount());
            case LINE -> new Load.Line((LineString) area(l), l.amount());
            case MOMENT -> new Load.Moment(area(l), l.amount(), l.second());
        };
    }

    private static Geometry area(LoadEntry l) {
        return l.area().orElseThrow();
    }
}
