package corewright.desktop.state;

/**
 * Which figures are those of before the last change, and are marked so wherever they stand.
 *
 * @param map regions, areas, moisture, depths
 * @param volumes litres, drawn at random for an earlier state of the readings
 * @param later what rests on the map: findings, places to read next, panels, advice, plans
 */
public record Behind(boolean map, boolean volumes, Later later) {
    /** How what rests on the map stands. */
    public enum Later {
        FRESH,
        OF_BEFORE,
        /** There is nothing yet. */
        AWAITED
    }

    public static final Behind NOTHING = new Behind(false, false, Later.FRESH);
    public static final Behind EVERYTHING = new Behind(true, true, Later.OF_BEFORE);

    /** As it stands beside a figure. */
    public static final String WORDS = "of before the change";

    /** Panels, advice and plans belong to the survey as it is. */
    public boolean whole() {
        return later == Later.FRESH;
    }

    /** There are findings, panels and plans, and they are old. */
    public boolean oldLater() {
        return later == Later.OF_BEFORE;
    }
}
