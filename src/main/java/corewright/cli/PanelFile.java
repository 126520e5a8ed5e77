package corewright.cli;

import corewright.survey.EdgeSupport;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What {@code PANEL.yaml} says: one sandwich panel with its patches and loads. Millimetre, newton, megapascal.
 *
 * @param edges one for all sides of the outline, or one each
 * @param openings support of the edges of openings
 * @param bond of the cores that patches put in
 * @param meshMm empty where it is to be chosen
 */
public record PanelFile(
        Polygon outline,
        List<EdgeSupport> edges,
        EdgeSupport openings,
        Build build,
        List<PatchEntry> patches,
        List<LoadEntry> loads,
        Bond bond,
        Study study) {
    public PanelFile {
        edges = List.copyOf(edges);
        patches = List.copyOf(patches);
        loads = List.copyOf(loads);
    }

    /** The layers as built. */
    public record Build(SkinEntry outer, SkinEntry inner, double coreMm, CoreEntry core) {}

    /**
     * @param strengthMPa empty if unknown, as all strengths
     */
    public record SkinEntry(
            double thicknessMm, double exMPa, double eyMPa, double nuXy, double gxyMPa, OptionalDouble strengthMPa) {}

    /** A core; what it carries in the plane is optional. */
    public record CoreEntry(double gxzMPa, double gyzMPa, double ezMPa, Optional<InPlane> inPlane, Strength strength) {}

    /** Stiffness of a core in the plane. */
    public record InPlane(double exMPa, double eyMPa, double nuXy, double gxyMPa) {}

    /** Strengths of a core, empty if unknown. */
    public record Strength(OptionalDouble shearMPa, OptionalDouble crushMPa) {}

    /** Strengths of the bond between a patch's core and the skins, empty if unknown. */
    public record Bond(OptionalDouble shearMPa, OptionalDouble peelMPa) {}

    /** An area with another core, or with none below the outer skin down to a depth. */
    public record PatchEntry(Geometry area, Optional<CoreEntry> core, OptionalDouble voidDepthMm) {}

    /** A load: its kind decides which of the numbers counts. */
    public record LoadEntry(Kind kind, Optional<Geometry> area, double amount, double second) {
        /** Force on an area, N; pressure everywhere, kPa; force along a line, N; moments on an area, N mm. */
        public enum Kind {
            FORCE,
            PRESSURE,
            LINE,
            MOMENT
        }
    }

    /** What is asked of the panel. */
    public record Study(OptionalDouble meshMm, List<Spot> probePoints) {
        public Study {
            probePoints = List.copyOf(probePoints);
        }
    }

    /** A place. */
    public record Spot(double x, double y) {}
}
