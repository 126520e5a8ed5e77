package corewright.stiffness;

import corewright.damage.Quantiles;
import corewright.survey.settings.Resin;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/** What is done to the core of an area; the rest stays as it was found. */
public sealed interface Treatment {
    /** Name of the face. */
    String face();

    /** Polygons, survey millimetres. */
    Geometry area();

    /**
     * Empty space and loose skins in the area are filled and bonded by a mix; what core remains stays as found.
     *
     * @param cavity its volume over the middle of what the readings say, where more is known of it than that
     */
    record Fill(String face, Geometry area, Resin resin, Optional<Quantiles> cavity) implements Treatment {
        /** A cavity as it was read. */
        public Fill(String face, Geometry area, Resin resin) {
            this(face, area, resin, Optional.empty());
        }
    }

    /**
     * The core is cut out and replaced, both skins bonded to the new one.
     *
     * @param core name of a core material
     */
    record Renew(String face, Geometry area, String core) implements Treatment {}

    /** Bonded wet core is dried; loose skins stay loose. */
    record Dry(String face, Geometry area) implements Treatment {}
}
