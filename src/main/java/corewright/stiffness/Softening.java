package corewright.stiffness;

import corewright.sandwich.spec.CoreMaterial;
import corewright.survey.CoreState;
import corewright.survey.Probe;
import java.util.List;

/**
 * What is left of a core's moduli where it is damaged but holds both skins. Common practice: wet sound wood keeps 0.6 to 0.8
 * of its shear modulus, rotten wood at most 0.05. The Wood Handbook's form (P12/Pg)^((12-M)/(Mp-12)) with Mp = 25 and
 * Pg/P12 = 0.8 for stiffness gives 0.80 from 25 % water up (from memory), within that range.
 *
 * @param share of the as-built moduli
 */
record Softening(double share) {
    static final Softening WET = new Softening(0.7);
    static final Softening ROTTED = new Softening(0.05);

    /** Dry again: what was merely wet is as stiff as before; drying does not mend rot. */
    static final Softening DRIED = new Softening(1);

    /** Wet core by what probes in it found: rotten as soon as one found it rotten. */
    static Softening found(List<Probe> inside) {
        return inside.stream().anyMatch(p -> p.coreState() == CoreState.ROTTED) ? ROTTED : WET;
    }

    /** In the better or the worse tenth of cases: the ends of the practice range; rot has no better end. */
    Softening in(Outlook outlook) {
        if (this.equals(WET)) {
            return switch (outlook.water()) {
                case WORSE -> new Softening(Doubt.WATER_LOW);
                case MIDDLE -> WET;
                case BETTER -> new Softening(Doubt.WATER_HIGH);
            };
        }
        return this;
    }

    CoreMaterial of(CoreMaterial built) {
        return share == 1 ? built : built.times(share);
    }
}
