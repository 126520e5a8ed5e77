package corewright.intake;

import corewright.intake.text.Lengths;
import corewright.intake.text.Notes;
import corewright.intake.text.RefusedException;
import corewright.intake.text.Words;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Laminate;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Checks a survey that was not read from a folder just now: from a survey file, or edited by hand. What a folder would be
 * refused for is refused here too, in the same words.
 */
public final class SurveyCheck {
    private final Survey survey;
    private final Notes notes = new Notes("survey.yaml");

    private SurveyCheck(Survey survey) {
        this.survey = survey;
    }

    /**
     * The survey with what is odd about it.
     *
     * @param importNotes of the files it was first read from; kept where they still speak of something in the survey
     * @throws RefusedException with every complaint, where nothing can be computed from it
     */
    public static Intake check(Survey survey, List<Finding> importNotes) throws RefusedException {
        SurveyCheck check = new SurveyCheck(survey);
        check.references();
        check.plans();
        check.notes.refuseIfAnyComplaint();
        Survey checked = Oddities.note(survey, check.notes);
        List<Finding> findings = new ArrayList<>(check.stillTrue(importNotes));
        findings.addAll(check.notes.findings());
        return new Intake(checked, findings);
    }

    /** Of a survey just read from a folder, the findings that {@link #check} cannot make again from the survey alone. */
    public static List<Finding> importNotes(Intake intake) throws RefusedException {
        Set<Finding.Fact> again = check(intake.survey(), List.of()).findings().stream()
                .map(Finding::fact)
                .collect(Collectors.toSet());
        return intake.findings().stream().filter(f -> !again.contains(f.fact())).toList();
    }

    private List<Finding> stillTrue(List<Finding> importNotes) {
        Set<Reading.Key> readings = all(survey.readings()).map(Reading::key).collect(Collectors.toSet());
        return importNotes.stream()
                .filter(f -> !(f.about() instanceof About.OfReading of) || readings.contains(of.reading()))
                .toList();
    }

    private static Stream<Reading> all(Readings r) {
        return Stream.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs(), r.temperatures(), r.curedTaps())
                .flatMap(Collection::stream);
    }

    /** Names that must be those of something. */
    private void references() {
        Set<String> faces = names(survey.faces(), Face::name);
        Set<String> meters = names(survey.meters(), Meter::name);
        Set<String> laminates = names(survey.laminates(), Laminate::name);
        all(survey.readings()).forEach(r -> known(r.origin(), "face", r.spot().face(), faces));
        for (Moisture m : survey.readings().moisture()) {
            known(m.origin(), "meter", m.meter(), meters);
        }
        for (Face face : survey.faces()) {
            if (!SurveyYaml.canNameAFile(face.name())) {
                String expected = "a name of at most 60 letters, digits, spaces, - and _, as it also names files";
                notes.expected(new Origin("faces", 0), "name", face.name(), expected);
            }
            known(new Origin("face " + face.name(), 0), "laminate", face.laminate(), laminates);
            for (Feature.LaminateArea area : face.all(Feature.LaminateArea.class)) {
                known(area.origin(), "laminate", area.laminate(), laminates);
            }
        }
        for (Laminate laminate : survey.laminates()) {
            Origin origin = new Origin("laminate " + laminate.name(), 0);
            known(origin, "skin", laminate.skin(), survey.materials().skins().keySet());
            known(origin, "core", laminate.core(), survey.materials().cores().keySet());
        }
        Readings r = survey.readings();
        if (r.moisture().isEmpty() && r.taps().isEmpty() && r.probes().isEmpty()) {
            String problem = "found no reading at all, expected at least one of moisture, taps or probes";
            notes.complain(new Origin("survey", 0), "readings", problem);
        }
    }

    private static <T> Set<String> names(List<T> things, Function<T, String> name) {
        return things.stream().map(name).collect(Collectors.toSet());
    }

    private void known(Origin origin, String column, String name, Set<String> names) {
        if (!names.contains(name)) {
            String expected = names.isEmpty() ? "none, as the survey has no " + column : Words.or(sorted(names));
            notes.expected(origin, column, name, expected);
        }
    }

    private static List<String> sorted(Set<String> names) {
        return names.stream().sorted().toList();
    }

    private void plans() {
        for (Face face : survey.faces()) {
            Origin origin = new Origin("face " + face.name(), 0);
            boolean good = possible(origin, face.outline());
            for (Feature feature : face.features()) {
                good &= possible(feature.origin(), feature.geometry());
            }
            if (good) {
                new PlanCheck(face, origin, notes)
                        .check(survey.settings().numerics().cellMm());
            }
        }
    }

    private boolean possible(Origin origin, Geometry geometry) {
        boolean near = Stream.of(geometry.getCoordinates())
                .allMatch(c -> Math.abs(c.x) <= Lengths.LARGEST_MM && Math.abs(c.y) <= Lengths.LARGEST_MM);
        if (!near) {
            notes.complain(origin, "geom", "found a point beyond 1 km from the datum");
        } else if (!new IsValidOp(geometry).isValid()) {
            notes.complain(origin, "geom", "found an outline that crosses or touches itself");
            return false;
        }
        return near;
    }
}
