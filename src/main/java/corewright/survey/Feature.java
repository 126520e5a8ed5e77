package corewright.survey;

import corewright.survey.settings.Check;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Something drawn on a face's plan besides its outline. Geometry is in survey millimetres. */
public sealed interface Feature {
    Origin origin();

    String name();

    /** As a sentence calls it: its name, else what it is. */
    default String called() {
        String kind = getClass()
                .getSimpleName()
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
        return !name().isBlank() ? name() : ("aeiou".indexOf(kind.charAt(0)) >= 0 ? "an " : "a ") + kind;
    }

    Geometry geometry();

    /**
     * A hole in the deck: hatch, locker, port. Where its edge has a coaming, all but {@code coamingSkin} of the last three are
     * there, and the edge is free but for it.
     *
     * @param coamingHeightMm null where there is no coaming
     * @param coamingThicknessMm null where there is no coaming
     * @param coamingSkin name of a skin material; null for that of the deck's own skins
     */
    record Opening(
            Origin origin,
            String name,
            Polygon geometry,
            EdgeSupport edge,
            @Nullable Double coamingHeightMm,
            @Nullable Double coamingThicknessMm,
            @Nullable String coamingSkin)
            implements Feature {
        public Opening {
            if ((coamingHeightMm == null) != (coamingThicknessMm == null)) {
                throw new IllegalArgumentException("coamingHeightMm and coamingThicknessMm go together");
            }
            if (coamingHeightMm != null) {
                Check.positive("coamingHeightMm", coamingHeightMm);
                Check.positive("coamingThicknessMm", coamingThicknessMm);
            }
            if (coamingHeightMm == null ? coamingSkin != null : edge != EdgeSupport.FREE) {
                throw new IllegalArgumentException("only an edge that is free but for a coaming has one");
            }
        }

        /** Without a coaming. */
        public Opening(Origin origin, String name, Polygon geometry, EdgeSupport edge) {
            this(origin, name, geometry, edge, Optional.empty());
        }

        /** With a coaming or without. */
        public Opening(Origin origin, String name, Polygon geometry, EdgeSupport edge, Optional<Coaming> coaming) {
            this(
                    origin,
                    name,
                    geometry,
                    edge,
                    coaming.map(Coaming::heightMm).orElse(null),
                    coaming.map(Coaming::thicknessMm).orElse(null),
                    coaming.flatMap(Coaming::skin).orElse(null));
        }

        /** What stands along the edge. */
        public Optional<Coaming> coaming() {
            return coamingHeightMm == null || coamingThicknessMm == null
                    ? Optional.empty()
                    : Optional.of(new Coaming(coamingHeightMm, coamingThicknessMm, Optional.ofNullable(coamingSkin)));
        }
    }

    /**
     * A beam along the edge of an opening that stands on the outer skin.
     *
     * @param heightMm above the outer skin
     * @param skin name of a skin material; empty for that of the deck's own skins
     */
    record Coaming(double heightMm, double thicknessMm, Optional<String> skin) {}

    /** Solid strip that water does not cross; it bounds a bay. */
    record Divider(Origin origin, String name, LineString geometry) implements Feature {}

    /** Structure under the deck that bounds a panel: bulkhead, beam, carlin. */
    record Support(Origin origin, String name, LineString geometry, EdgeSupport edge) implements Feature {}

    /**
     * Anything bolted through.
     *
     * @param metal upsets meters
     * @param loadBearing carries load of the rig, mooring or engine
     * @param keepoutMm no hole nearer than this to the geometry
     */
    record Fitting(Origin origin, String name, Geometry geometry, boolean metal, boolean loadBearing, double keepoutMm)
            implements Feature {
        public Fitting {
            Check.notNegative("keepoutMm", keepoutMm);
        }
    }

    /** Area without core: solid laminate or a plywood pad. */
    record Solid(Origin origin, String name, Polygon geometry) implements Feature {}

    /** Area with a laminate other than the outline's. */
    record LaminateArea(Origin origin, String name, Polygon geometry, String laminate) implements Feature {}

    /** Something that upsets meters without being a fitting: tank, cable, wet locker, copper paint. */
    record Disturbance(Origin origin, String name, Geometry geometry) implements Feature {}

    /** An existing cut, core-drilled hole or opening edge through which a rod or a long nozzle reaches the cavity. */
    record Access(Origin origin, String name, Geometry geometry) implements Feature {}
}
