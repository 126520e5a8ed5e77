package corewright.report.cards;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.repair.work.WorkDone;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.NamedLog;
import corewright.survey.Survey;
import corewright.survey.WorkEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The record of the work: every line of the log as it was written, its hole by name, who, which lot, and the sums. */
public final class WorkRecord {
    private static final int ROWS = 22;
    private static final double ROW = 7;
    private static final double[] AT = {0, 15, 38, 62, 78, 116, 151, 186};
    private static final Type HEADING = new Type(Typeface.TEXT_SEMIBOLD, 9);
    private static final Type CELL = new Type(Typeface.TEXT, 9.5);
    private static final Type SMALL = new Type(Typeface.TEXT, 6.5);
    private static final double SECONDS_PER_MINUTE = 60;

    private WorkRecord() {}

    /** Pages; none before any work. */
    public static List<PdfFile.Painting> pages(Assessment assessment) {
        List<WorkEntry> log = assessment.survey().log();
        List<PdfFile.Painting> pages = new ArrayList<>();
        int of = (log.size() + ROWS - 1) / ROWS;
        for (int i = 0; i < of; i++) {
            int number = i + 1;
            List<WorkEntry> rows = log.subList(i * ROWS, Math.min(log.size(), (i + 1) * ROWS));
            pages.add(paper -> paint(paper, assessment, rows, "page " + number + " of " + of));
        }
        return pages;
    }

    private static void paint(Paper paper, Assessment assessment, List<WorkEntry> rows, String page) {
        Survey survey = assessment.survey();
        Measure measure = Measure.of(survey);
        CardSheet.head(
                paper,
                "Record of the work",
                measure.say(facts(assessment)),
                List.of(page, "survey of " + Figures.date(survey.heading().surveyed())));
        row(paper, CardSheet.BODY, HEADING, "min", "hole", "grams", "cup", "who", "resin lot", "mix showed", "note");
        double y = CardSheet.BODY + ROW;
        paper.line(Pen.EDGE, CardSheet.LEFT, y, CardSheet.RIGHT, y);
        for (WorkEntry e : rows) {
            row(
                    paper,
                    y,
                    CELL,
                    Figures.atMost(e.afterS() / SECONDS_PER_MINUTE, 1),
                    name(assessment, e),
                    Figures.fixed(e.grams(), 1),
                    e.cup() == null ? "" : String.valueOf(e.cup()),
                    e.who(),
                    e.resinLot(),
                    showed(e),
                    note(e));
            y += ROW;
            paper.line(Pen.FAINT, CardSheet.LEFT, y, CardSheet.RIGHT, y);
        }
    }

    private static String facts(Assessment assessment) {
        Survey survey = assessment.survey();
        double all = WorkDone.log(survey, assessment.decision().injections()).entries().stream()
                .mapToDouble(WorkEntry::grams)
                .sum();
        double[] degrees = survey.readings().temperatures().stream()
                .map(t -> t.valueC())
                .filter(Objects::nonNull)
                .mapToDouble(c -> c)
                .toArray();
        String warm = degrees.length == 0
                ? ""
                : " The skin was read at " + degrees.length + " places, up to "
                        + Figures.atMost(Arrays.stream(degrees).max().orElse(0), 1) + " °C.";
        return Prose.bold(Prose.plain(Titles.boat(survey.heading())) + ".") + " "
                + survey.log().size() + " lines, "
                + Figures.fixed(all, 1) + " g counted into holes. Planned for "
                + Figures.atMost(survey.settings().climate().temperatureC(), 0) + " °C." + warm;
    }

    /** The name it was counted under, else as written. */
    private static String name(Assessment assessment, WorkEntry entry) {
        return WorkDone.log(assessment.survey(), assessment.decision().injections()).entries().stream()
                .filter(e -> isFrom(e, entry))
                .map(WorkEntry::hole)
                .findFirst()
                .orElse("“" + entry.hole() + "” ?");
    }

    /** Lines that were typed in the window have one origin: they are told apart by minute, grams and hole. */
    private static boolean isFrom(WorkEntry named, WorkEntry written) {
        String hole = NamedLog.folded(written.hole());
        String name = NamedLog.folded(named.hole());
        return named.origin().equals(written.origin())
                && named.afterS() == written.afterS()
                && named.grams() == written.grams()
                && (name.equals(hole) || name.endsWith("-" + hole));
    }

    private static String showed(WorkEntry e) {
        return Stream.of(e.ventShown(), e.oozeAt())
                .filter(Objects::nonNull)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String note(WorkEntry e) {
        return Stream.of(
                        e.lift() == null ? "" : "lift " + e.lift(),
                        e.leak().isEmpty() ? "" : "leak: " + e.leak(),
                        e.stopped().isEmpty() ? "" : "left off: " + e.stopped(),
                        Prose.plain(e.note()))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining("; "));
    }

    private static void row(Paper paper, double top, Type type, String... words) {
        for (int i = 0; i < words.length; i++) {
            double left = CardSheet.LEFT + AT[i];
            double width = (i + 1 < AT.length ? CardSheet.LEFT + AT[i + 1] : CardSheet.RIGHT) - left - 2;
            Type fits = type;
            while (fits.width(words[i]) > width && fits.points() > SMALL.points()) {
                fits = fits.at(fits.points() - 0.5);
            }
            List<String> lines = fits.wrap(words[i], width);
            for (int l = 0; l < lines.size(); l++) {
                double base = CardSheet.level(fits, top, ROW) + (l - (lines.size() - 1) / 2.0) * fits.leadMm() * 0.8;
                paper.text(lines.get(l), left, base, fits, Anchor.LEFT);
            }
        }
    }
}
