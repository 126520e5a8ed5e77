package corewright.report.page;

import corewright.drawing.kit.Figures;
import corewright.survey.Heading;
import java.util.List;
import java.util.stream.Stream;

/** How a survey is named at the head of a page. */
public final class Titles {
    private Titles() {}

    /** The vessel, or the survey's name where the vessel has none. */
    public static String boat(Heading heading) {
        return Prose.plain(heading.vessel().isBlank() ? heading.name() : heading.vessel());
    }

    /** Who, which survey and when, for the right end of a page's head; what may be left out first comes first. */
    public static List<String> data(Heading heading) {
        String survey = heading.vessel().isBlank() ? "" : heading.name();
        return Stream.of(survey, heading.surveyor(), Figures.date(heading.surveyed()))
                .map(Prose::plain)
                .filter(s -> !s.isEmpty())
                .toList();
    }
}
