package corewright.repair.plan;

import corewright.survey.Spot;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Polygon;

/**
 * A filled place that is still hollow after cure, and what it would take to fill it again.
 *
 * @param id S1, S2 ... over the whole survey
 * @param region in which its middle lies
 * @param spot where to go in, null where no hole may be drilled
 * @param hole the planned hole or vent that is drilled open again, empty where a new one is needed
 * @param lowMm3 only the skin is not bonded
 * @param highMm3 nothing arrived: the gap as mapped
 * @param resin name of the mix for what is most likely left, a thin gap
 * @param lowG mixed grams for {@code lowMm3}, with waste
 * @param highG mixed grams for {@code highMm3}, with waste
 * @param depthStopMm from the outer surface to the drill's tip; 0 where no hole may be drilled
 * @param taps ids of what was heard there, hollow and the dull beside it
 * @param advice what to do, in a few sentences
 */
public record SecondShot(
        String id,
        String region,
        Polygon area,
        @Nullable Spot spot,
        String hole,
        double lowMm3,
        double highMm3,
        String resin,
        double lowG,
        double highG,
        double depthStopMm,
        List<String> taps,
        String advice) {
    public SecondShot {
        taps = List.copyOf(taps);
    }

    public double areaMm2() {
        return area.getArea();
    }
}
