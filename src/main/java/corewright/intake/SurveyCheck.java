package corewright.intake;

import corewright.intake.text.Clean;
import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Wkt;
import corewright.survey.About;
import corewright.survey.DeckLoad;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Checks a survey that was not read from a folder just now: from a survey file, or edited by hand. What a folder would be
 * refused for is refused here too, in the same words.
 */
public final class SurveyCheck {
    /** Of a sentence of an import; ours are shorter. */
    private static final int LONGEST = 5000;

    private final Survey survey;
    private final Notes notes;

    private SurveyCheck(Survey survey, Notes notes) {
        this.survey = survey;
        this.notes = notes;
    }

    /**
     * The survey with what is odd about it.
     *
     * @param importNotes of the files it was first read from; kept where they still speak of something in the survey
     * @throws RefusedException with every complaint, where nothing can be computed from it
     */
    public static Intake check(Survey survey, List<Finding> importNotes) throws RefusedException {
        return check(survey, importNotes, false);
    }

    /** The same for a survey that is still to be taken: it need not have a reading. */
    public static Intake checkPlan(Survey survey, List<Finding> importNotes) throws RefusedException {
        return check(survey, importNotes, true);
    }

    private static Intake check(Survey survey, List<Finding> importNotes, boolean unread) throws RefusedException {
        Notes notes = new Notes("survey.yaml");
        SurveyCheck check = new SurveyCheck(CleanSurvey.of(survey, notes), notes);
        SurveyRules.check(check.survey, notes, unread);
        check.plans();
        notes.refuseIfAnyComplaint();
        Survey checked = Oddities.note(check.survey, notes);
        List<Finding> findings = new ArrayList<>(check.stillTrue(importNotes));
        findings.addAll(check.notes.findings());
        return new Intake(checked, findings);
    }

    /** Of a survey just read from a folder, the findings that {@link #check} cannot make again from the survey alone. */
    public static List<Finding> importNotes(Intake intake) throws RefusedException {
        Set<Finding.Fact> again = checkPlan(intake.survey(), List.of()).findings().stream()
                .map(Finding::fact)
                .collect(Collectors.toSet());
        return intake.findings().stream().filter(f -> !again.contains(f.fact())).toList();
    }

    private List<Finding> stillTrue(List<Finding> importNotes) {
        Set<Reading.Key> readings = all(survey.readings()).map(Reading::key).collect(Collectors.toSet());
        return importNotes.stream()
                .filter(f -> !(f.about() instanceof About.OfReading of) || readings.contains(of.reading()))
                .map(SurveyCheck::clean)
                .toList();
    }

    /** Its words come from the file, as the survey's do. */
    private static Finding clean(Finding f) {
        About about = f.about();
        if (about instanceof About.OfFace face) {
            about = new About.OfFace(Clean.line(face.face(), LONGEST));
        } else if (about instanceof About.OfFeature feature) {
            about = new About.OfFeature(Clean.line(feature.id(), LONGEST), feature.spot());
        } else if (about instanceof About.OfFile file) {
            about = new About.OfFile(clean(file.origin()));
        }
        String message = Clean.line(f.message(), LONGEST);
        return new Finding(
                f.severity(), clean(f.origin()), about, f.subject(), message, Clean.line(f.effect(), LONGEST));
    }

    private static Origin clean(Origin origin) {
        return new Origin(Clean.line(origin.file(), LONGEST), origin.line());
    }

    private static Stream<Reading> all(Readings r) {
        return Stream.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures(), r.curedTaps())
                .flatMap(Collection::stream);
    }

    private void plans() {
        for (DeckLoad load : survey.loads()) {
            possible(new Origin("load " + load.loadCase(), 0), load.area());
        }
        for (Face face : survey.faces()) {
            Origin origin = new Origin("face " + face.name(), 0);
            boolean good = possible(origin, face.outline());
            for (Feature feature :
                    face.features().subList(0, Math.min(face.features().size(), PlanReader.MOST_FEATURES))) {
                good &= possible(feature.origin(), feature.geometry());
            }
            if (good && face.features().size() <= PlanReader.MOST_FEATURES) {
                new PlanCheck(face, origin, notes)
                        .check(survey.settings().numerics().cellMm());
            }
        }
    }

    /** Points too far or too many are a complaint already. */
    private boolean possible(Origin origin, Geometry geometry) {
        if (geometry.getNumPoints() > Wkt.MOST_VERTICES
                || geometry.getEnvelopeInternal().maxExtent() > 2 * Lengths.LARGEST_MM) {
            return false;
        }
        if (!new IsValidOp(geometry).isValid()) {
            notes.complain(origin, "geom", "found an outline that crosses or touches itself");
            return false;
        }
        return true;
    }
}
