package corewright.comparison;

import corewright.damage.Condition;
import java.util.EnumSet;
import java.util.Set;

/** What is compared. */
public enum Quantity {
    DAMAGED("damaged", Unit.AREA, EnumSet.complementOf(EnumSet.of(Condition.SOUND)), true, true),
    WET("wet", Unit.AREA, EnumSet.of(Condition.WET), true, true),
    DELAMINATED("delaminated", Unit.AREA, EnumSet.of(Condition.DELAMINATED), true, true),
    WET_DELAMINATED("wet-delaminated", Unit.AREA, EnumSet.of(Condition.WET_DELAMINATED), true, true),
    VOID("void", Unit.AREA, EnumSet.of(Condition.VOID), false, true),
    /** Wet core, bonded or not; of a void nothing is known. */
    WATER("water", Unit.AREA, EnumSet.of(Condition.WET, Condition.WET_DELAMINATED), true, false),
    /** Skin off the core, whatever is below. */
    LOOSE(
            "loose",
            Unit.AREA,
            EnumSet.of(Condition.DELAMINATED, Condition.WET_DELAMINATED, Condition.VOID),
            false,
            true),
    VOID_VOLUME("void_volume", Unit.VOLUME, EnumSet.of(Condition.VOID), false, true),
    STIFFNESS("stiffness", Unit.STIFFNESS, EnumSet.noneOf(Condition.class), true, true);

    /** In which unit a quantity is kept and told. */
    public enum Unit {
        AREA("m2", 1e6),
        VOLUME("l", 1e6),
        STIFFNESS("N/mm", 1);

        private final String word;
        private final double inside;

        Unit(String word, double inside) {
            this.word = word;
            this.inside = inside;
        }

        /** As in files. */
        public String word() {
            return word;
        }

        /** From the unit inside to that of files. */
        public double told(double value) {
            return value / inside;
        }
    }

    private final String word;
    private final Unit unit;
    private final Set<Condition> conditions;
    private final boolean water;
    private final boolean bond;

    Quantity(String word, Unit unit, Set<Condition> conditions, boolean water, boolean bond) {
        this.word = word;
        this.unit = unit;
        this.conditions = Set.copyOf(conditions);
        this.water = water;
        this.bond = bond;
    }

    /** As in files. */
    public String word() {
        return word;
    }

    public Unit unit() {
        return unit;
    }

    /** Conditions whose areas add up to it. */
    public Set<Condition> conditions() {
        return conditions;
    }

    /**
     * By how much the limits of its difference are widened. Which of several conditions a damaged place is put to is less sure than the
     * draws have it: without this, eight in a hundred pairs of surveys of one deck would have claimed a change of one
     * (corewright.bench.ResurveyBenchmark, seeds 8000 to 8099); 2 was tried on other seeds.
     */
    double widening() {
        return this == WET || this == DELAMINATED || this == WET_DELAMINATED || this == VOID ? 2 : 1;
    }

    /** Rests on readings of water. */
    boolean needsWater() {
        return water;
    }

    /** Rests on taps and pilot holes. */
    boolean needsBond() {
        return bond;
    }
}
