package corewright.intake;

import corewright.intake.text.Notes;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Origin;
import corewright.survey.Subject;
import corewright.survey.Survey;

/**
 * Where tilt and direction leave open from which side a face is worked on: walls. A deck is seen from above and a face overhead
 * from below, but of a wall that runs fore and aft x and y do not say whether it is faced to starboard or to port, and the one
 * sight is the mirror image of the other.
 */
final class Hands {
    private Hands() {}

    static void note(Survey survey, Notes notes) {
        survey.faces().stream().filter(Face::wall).forEach(face -> note(face, notes));
    }

    private static void note(Face face, Notes notes) {
        String message = face.risesWithY()
                ? "Drawings of the wall " + face.name()
                        + " are as seen by someone who faces starboard: bow to the left."
                : "On the wall " + face.name() + " y runs down by its uphill_deg; on walls it is expected to run up.";
        String effect = face.risesWithY()
                ? "Someone who faces port sees its mirror image, bow to the right: mark holes there by their figures, never by"
                        + " laying the drawing on."
                : "Heights and rows are told as it says: a wrong sign puts every hole on the wrong side of the datum.";
        notes.doubt(new Origin(SurveyYaml.NAME, 0), new About.OfFace(face.name()), Subject.SIDE, message, effect);
    }
}
