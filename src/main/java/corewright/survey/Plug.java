package corewright.survey;

import corewright.survey.settings.Check;

/**
 * A core sample dried in an oven.
 *
 * @param moisturePercent water as a share of dry mass, per cent (EN 13183-1); the one true percentage in a survey
 */
public record Plug(Origin origin, String id, Spot spot, double moisturePercent) implements Reading {
    public Plug {
        Check.notNegative("moisturePercent", moisturePercent);
    }
}
