package corewright.stiffness;

import corewright.survey.settings.Resin;
import org.locationtech.jts.geom.Geometry;

/** What is done to the core of an area; the rest stays as it was found. */
public sealed interface Treatment {
    /** Name of the face. */
    String face();

    /** Polygons, survey millimetres. */
    Geometry area();

    /** Empty space and loose skins in the area are filled and bonded by a mix; what core remains stays as found. */
    record Fill(String face, Geometry area, Resin resin) implements Treatment {}

    /**
     * The core is cut out and replaced, both skins bonded to the new one.
     *
     * @param core name of a core material
     */
    record Renew(String face, Geometry area, String core) implements Treatment {}

    /** Bonded wet core is dried; loose skins stay loose. */
    record Dry(String face, Geometry area) implements Treatment {}
}
