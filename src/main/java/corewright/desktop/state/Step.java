package corewright.desktop.state;

/** The six steps of a survey, in the order of the rule at the window's head; they open in any order. */
public enum Step {
    PLAN("Plan"),
    READINGS("Readings"),
    DAMAGE("Damage"),
    REPAIR("Repair"),
    STIFFNESS("Stiffness"),
    PAPERS("Papers");

    private final String word;

    Step(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
