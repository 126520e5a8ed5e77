package corewright.desktop.work;

import corewright.desktop.state.FreeIds;
import corewright.desktop.state.Typed;
import corewright.desktop.state.Units;
import corewright.survey.Edit;
import corewright.survey.Origin;
import corewright.survey.Part;
import corewright.survey.Side;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.SurfaceTemperature;
import corewright.survey.Survey;
import corewright.survey.Tap;

/** What is noted while a fill cures, and after it, as edits. */
final class FillNotes {
    private static final Origin AT_THE_BOAT = new Origin("at the boat", 0);
    private static final double LONGEST_MIN = 24 * 60;
    private static final double HOTTEST_C = 120;
    private static final int SECONDS = 60;

    private FillNotes() {}

    /**
     * Warmth of the skin.
     *
     * @param minutes since the first cup was mixed, as typed
     * @param degrees as typed; empty where it was felt by hand
     * @param warm felt so by hand; counts only without degrees
     */
    static Edit warmth(Survey survey, Spot spot, String minutes, String degrees, boolean warm, Units units)
            throws Typed {
        double after =
                Typed.number("Minutes", minutes, 0, LONGEST_MIN, "minutes since the first cup was mixed, such as 20");
        double most = units.degrees(HOTTEST_C);
        Double measured = Typed.numberOrNothing(
                "The warmth", degrees, 0, most, "degrees up to " + Math.round(most) + ", or nothing");
        Double celsius = measured == null ? null : (Double) units.celsius(measured);
        return Edit.add(
                survey,
                Part.TEMPERATURES,
                new SurfaceTemperature(
                        AT_THE_BOAT,
                        FreeIds.next(Part.TEMPERATURES.of(survey), "HW"),
                        spot,
                        after * SECONDS,
                        celsius,
                        celsius == null ? (Boolean) warm : null));
    }

    /** A tap after cure. */
    static Edit tap(Survey survey, Spot spot, Sound sound) {
        return Edit.add(
                survey,
                Part.CURED_TAPS,
                new Tap(AT_THE_BOAT, FreeIds.next(Part.CURED_TAPS.of(survey), "HC"), spot, sound, null, Side.OUTER));
    }
}
