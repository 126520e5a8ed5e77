package corewright.survey;

import corewright.survey.settings.Check;
import org.jspecify.annotations.Nullable;

/**
 * A pilot hole through the outer skin.
 *
 * @param voidDepthMm empty height under the outer skin, 0 where the drill met core at once
 * @param coreState what came up, null where nobody noted it
 * @param coreMoisture the water noted with rotted or missing core
 */
public record Probe(
        Origin origin,
        String id,
        Spot spot,
        double voidDepthMm,
        @Nullable CoreState coreState,
        @Nullable CoreMoisture coreMoisture)
        implements Reading {
    public Probe {
        Check.notNegative("voidDepthMm", voidDepthMm);
    }

    /**
     * What this hole says of water: dry, damp or wet, or null where it says nothing. A note of the moisture wins;
     * without one rotted core counts as wet and missing core says nothing.
     */
    public @Nullable CoreMoisture water() {
        if (coreMoisture != null) {
            return coreMoisture;
        }
        if (coreState == null) {
            return null;
        }
        return switch (coreState) {
            case DRY -> CoreMoisture.DRY;
            case DAMP -> CoreMoisture.DAMP;
            case WET, ROTTED -> CoreMoisture.WET;
            case NONE -> null;
        };
    }
}
