package corewright.repair.plan;

import corewright.survey.Spot;
import java.util.List;

/**
 * An injection whose fill is not planned yet: it may be filled with another region.
 *
 * @param region its name
 * @param resin name of the mix
 * @param holes places of the injection holes
 */
public record Prospect(String region, String resin, List<Spot> holes) {
    public Prospect {
        holes = List.copyOf(holes);
    }

    /** With the region's name. */
    public Prospect named(String name) {
        return new Prospect(name, resin, holes);
    }
}
