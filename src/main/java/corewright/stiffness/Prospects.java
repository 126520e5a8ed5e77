package corewright.stiffness;

import corewright.sandwich.spec.PanelSpec;

/** A panel in one state, as in the worse tenth of cases, as estimated, and as in the better tenth. */
record Prospects(PanelSpec worse, PanelSpec middle, PanelSpec better) {
    /** Nothing in doubt. */
    static Prospects all(PanelSpec spec) {
        return new Prospects(spec, spec, spec);
    }
}
