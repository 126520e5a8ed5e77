package corewright.intake;

import corewright.intake.text.Notes;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Heading;
import corewright.survey.Origin;
import corewright.survey.Subject;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Letters of names that pages and maps cannot show: their typeface holds Latin letters, figures and common signs. */
public final class Letters {
    private static final int TOLD = 12;
    private static final String SIGNS = "–—‘’‚“”„†‡•…‰′″‹›€™←↑→↓−≈≠≤≥";

    private Letters() {}

    static void note(Survey survey, Notes notes) {
        Heading h = survey.heading();
        List<String> texts = new ArrayList<>(List.of(h.name(), h.vessel(), h.surveyor()));
        for (Face face : survey.faces()) {
            texts.add(face.name());
            face.features().stream().map(Feature::name).forEach(texts::add);
        }
        TreeSet<String> missing = new TreeSet<>();
        texts.stream()
                .flatMapToInt(String::codePoints)
                .filter(c -> !shown(c))
                .forEach(c -> missing.add(Character.toString(c)));
        if (!missing.isEmpty()) {
            String letters = String.join(" ", missing.stream().limit(TOLD).toList());
            String more = missing.size() > TOLD ? " and " + (missing.size() - TOLD) + " more" : "";
            notes.doubt(
                    new Origin(SurveyYaml.NAME, 0),
                    Subject.NAME,
                    "Names hold letters that the typeface of pages and maps lacks: " + letters + more + ".",
                    "Empty boxes stand for them on pages and maps; data files have them. Write the names in Latin letters too.");
        }
    }

    /** Whether the typeface of pages and maps has it. */
    public static boolean shown(int c) {
        return Character.isWhitespace(c)
                || c >= 0x20 && c <= 0x7e
                || c >= 0xa0 && c <= 0x17f && c != 0xad
                || c >= 0x1fa && c <= 0x21b
                || c >= 0x1ea0 && c <= 0x1ef9
                || SIGNS.indexOf(c) >= 0;
    }
}
