package corewright.sandwich;

import corewright.sandwich.spec.CoreMaterial;
import corewright.sandwich.spec.PanelSpec;
import corewright.sandwich.spec.Patch;
import corewright.sandwich.spec.Skin;
import corewright.sandwich.spec.Support;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Panels that several tests use. */
public final class Panels {
    static final CoreMaterial BALSA =
            new CoreMaterial(157, 157, 3900, Optional.of(new CoreMaterial.InPlane(60, 60, 0.05, 25)));

    /** Isotropic foam of E 150 MPa, nu 0.3; held sideways, as between stiff skins, its Ez is E(1-nu)/((1+nu)(1-2nu)). */
    static final CoreMaterial FOAM = new CoreMaterial(
            150 / 2.6,
            150 / 2.6,
            150 * 0.7 / (1.3 * 0.4),
            Optional.of(new CoreMaterial.InPlane(150, 150, 0.3, 150 / 2.6)));

    private Panels() {}

    static Polygon rectangle(double x0, double y0, double x1, double y1) {
        return (Polygon) new GeometryFactory().toGeometry(new Envelope(x0, x1, y0, y1));
    }

    static Polygon ellipse(double cx, double cy, double a, double b) {
        int sides = 256;
        Coordinate[] ring = new Coordinate[sides + 1];
        for (int k = 0; k <= sides; k++) {
            double t = 2 * Math.PI * (k % sides) / sides;
            ring[k] = new Coordinate(cx + a * Math.cos(t), cy + b * Math.sin(t));
        }
        return new GeometryFactory().createPolygon(ring);
    }

    static Geometry turned(Geometry g, double degrees) {
        return AffineTransformation.rotationInstance(Math.toRadians(degrees)).transform(g);
    }

    /** A bay between beams far apart, skins 3 and 2.5 mm on 9.5 mm of balsa. */
    static PanelSpec bay(double length, double width, Support support) {
        return new PanelSpec(
                rectangle(0, 0, length, width),
                List.of(support),
                Skin.isotropic(3, 11000, 0.3),
                Skin.isotropic(2.5, 11000, 0.3),
                new PanelSpec.Core(9.5, BALSA),
                List.of());
    }

    /** The panel of solids-900x600.csv, case a to e. */
    public static PanelSpec solids(char which, Support support) {
        Polygon ellipse = ellipse(450, 300, 200, 130);
        List<Patch> patches =
                switch (which) {
                    case 'b' -> List.of(new Patch.Loose(ellipse, 12.5));
                    case 'c' -> List.of(new Patch.Core(ellipse, FOAM));
                    case 'd' -> List.of(new Patch.Loose(ellipse, 6.25));
                    case 'e' -> List.of(new Patch.Core(ellipse, BALSA.times(0.4)));
                    default -> List.of();
                };
        Skin skin = Skin.isotropic(3, 11000, 0.3);
        return new PanelSpec(
                rectangle(0, 0, 900, 600), List.of(support), skin, skin, new PanelSpec.Core(12.5, BALSA), patches);
    }

    /** The panel of solids-nonlinear.csv: a rectangle in its middle is loose. */
    public static PanelSpec loose(double depthMm) {
        return solids('a', Support.SIMPLE).with(List.of(new Patch.Loose(rectangle(250, 175, 650, 425), depthMm)));
    }

    /** A homogeneous thin plate of the given thickness: two halves on a core of next to no thickness and no give. */
    static PanelSpec plate(Polygon outline, Support support, double skinMm, double coreMm, double eMPa, double nu) {
        Skin skin = Skin.isotropic(skinMm, eMPa, nu);
        CoreMaterial stiff = new CoreMaterial(1e3 * eMPa, 1e3 * eMPa, 1e3 * eMPa);
        return new PanelSpec(outline, List.of(support), skin, skin, new PanelSpec.Core(coreMm, stiff), List.of());
    }

    /** Bending stiffness of {@link #plate}, N mm. */
    static double bending(double skinMm, double coreMm, double eMPa, double nu) {
        double d = coreMm + skinMm;
        return eMPa / (1 - nu * nu) * (skinMm * d * d / 2 + skinMm * skinMm * skinMm / 6);
    }
}
