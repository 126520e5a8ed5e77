package corewright.desktop.touch;

import corewright.desktop.slip.Slip;
import corewright.desktop.state.Typed;
import corewright.survey.Edit;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A thing of the survey whose values can be read and changed; immutable, and knows no window. */
interface Form {
    /** Whether the survey still has it. */
    boolean in(Survey survey);

    /** What it is, in words. */
    Slip slip(Survey survey);

    /** As a deed calls it: "reading W12 at E, starboard 2". */
    String called(Survey survey);

    /** Where the plan marks it. */
    Spot spot();

    List<FormField> fields(Survey survey);

    /** The same thing after a change, and the change; null where the text says what already is. */
    @Nullable
    Changed changed(Survey survey, String field, String text) throws Typed;

    /** What takes it away. */
    Edit removed(Survey survey);

    /** @param now known by this from then on */
    record Changed(Form now, Edit edit) {}
}
