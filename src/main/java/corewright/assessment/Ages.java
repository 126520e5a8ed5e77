package corewright.assessment;

/**
 * The age of each part of an assessment. What is old is marked so wherever it stands.
 *
 * @param map regions, areas, moisture, depths
 * @param volumes litres, from cavities drawn at random
 * @param rest what rests on the map: findings, places to read next, panels, advice, plans
 */
public record Ages(Age map, Age volumes, Age rest) {
    public static final Ages FRESH = new Ages(Age.FRESH, Age.FRESH, Age.FRESH);
    public static final Ages OLD = new Ages(Age.OLD, Age.OLD, Age.OLD);

    /** The map is there, what rests on it will follow. */
    public static final Ages MAPPED = new Ages(Age.FRESH, Age.FRESH, Age.AWAITED);

    /** Nothing is there yet. */
    public static final Ages AWAITED = new Ages(Age.AWAITED, Age.AWAITED, Age.AWAITED);

    /** As it stands beside an old figure. */
    public static final String WORDS = "of before the change";

    /** All of it belongs to the survey as it is. */
    public boolean fresh() {
        return equals(FRESH);
    }

    /** Of before the last change, as far as it is there. */
    Ages older() {
        return new Ages(older(map), older(volumes), older(rest));
    }

    private static Age older(Age age) {
        return age == Age.AWAITED ? Age.AWAITED : Age.OLD;
    }

    /** Findings, panels and plans belong to the survey as it is. */
    public boolean freshRest() {
        return rest == Age.FRESH;
    }

    /** Regions, areas, moisture and depths are of before. */
    public boolean oldMap() {
        return map == Age.OLD;
    }

    /** Litres are of before. */
    public boolean oldVolumes() {
        return volumes == Age.OLD;
    }

    /** There are findings, panels and plans, and they are of before. */
    public boolean oldRest() {
        return rest == Age.OLD;
    }
}
