package corewright.desktop.state;

import corewright.survey.Edit;
import corewright.survey.Survey;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Changes of what a person typed: refused with a sentence, or made as edits. */
public final class Attempts {
    /** Where changes go. */
    public interface Edits {
        /** @param deed as undo will name it */
        void edit(String deed, Function<Survey, @Nullable Edit> change);
    }

    /** A change of a survey; null where there is nothing to change. */
    public interface Change {
        @Nullable
        Edit of(Survey survey) throws Typed;
    }

    private final Supplier<Survey> survey;
    private final Edits edits;
    private String problem = "";

    /** @param survey as it is at the time */
    public Attempts(Supplier<Survey> survey, Edits edits) {
        this.survey = survey;
        this.edits = edits;
    }

    /** Checked against the survey as it is, then made from the survey as it is when its turn comes; says whether it will do. */
    public boolean make(String deed, Change change) {
        try {
            if (change.of(survey.get()) != null) {
                edits.edit(deed, s -> made(change, s));
            }
            problem = "";
            return true;
        } catch (Typed e) {
            problem = String.valueOf(e.getMessage());
            return false;
        }
    }

    private static @Nullable Edit made(Change change, Survey survey) {
        try {
            return change.of(survey);
        } catch (Typed e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    /** Why the last change was not made; empty where it was. */
    public String problem() {
        return problem;
    }
}
