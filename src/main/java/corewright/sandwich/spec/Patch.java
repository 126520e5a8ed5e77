package corewright.sandwich.spec;

import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/** An area of a panel that differs from the rest; of patches that overlap the later one holds. */
public sealed interface Patch {
    /** Polygons, millimetres. */
    Geometry area();

    /**
     * No bond between the outer skin and what is below.
     *
     * @param depthMm empty height from the outer skin down: the core's thickness if there is no core, 0 if the skin is
     *     merely loose. What core remains rides on the inner skin.
     * @param rest the core that remains, where it is not the panel's own: wet or rotted
     */
    record Loose(Geometry area, double depthMm, Optional<CoreMaterial> rest) implements Patch {
        /** Over the panel's own core. */
        public Loose(Geometry area, double depthMm) {
            this(area, depthMm, Optional.empty());
        }
    }

    /** Another core, bonded to both skins: wet, filled with foam, or replaced. */
    record Core(Geometry area, CoreMaterial material) implements Patch {}
}
