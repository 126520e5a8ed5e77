package corewright.bench;

import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Assessor;
import corewright.assessment.Earlier;
import corewright.assessment.Progress;
import corewright.damage.Insight;
import corewright.damage.InsightWork;
import corewright.intake.Intake;
import corewright.intake.SurveyFolder;
import corewright.report.cards.WorkCards;
import corewright.report.owner.OwnerReport;
import corewright.report.record.SurveyRecord;
import corewright.report.template.DrillTemplate;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * How long the documents of a survey take, once the survey is assessed: the first time, and the least of the next times. Times
 * are of the processor, all of them on one thread.
 *
 * <p>{@code java -cp ... corewright.bench.DocumentTimes demo-data/quillwort target/documents 5}
 */
public final class DocumentTimes {
    private DocumentTimes() {}

    private interface Writing {
        void to(Path file) throws IOException;
    }

    /** Survey, folder, how many times. */
    public static void main(String[] args) throws IOException {
        Intake in = SurveyFolder.read(Path.of(args[0]));
        Assessed assessed = Assessor.assess(in.survey(), in.findings(), Earlier.NONE, Progress.NONE);
        Assessment a = assessed.assessment();
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Map<String, Insight> insights = new HashMap<>();
        a.damage()
                .faces()
                .forEach(f -> insights.put(
                        f.face().name(), InsightWork.of(f, assessed.earlier().parameters())));
        long after = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        System.out.printf("check of the map: %.2f s%n", (after - before) / 1e9);
        Path out = Files.createDirectories(Path.of(args[1]));
        int times = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        for (int i = 0; i < times; i++) {
            System.out.printf("round %d:", i + 1);
            double all = timed("owner-report", f -> OwnerReport.write(a, f), out)
                    + timed("work-cards", f -> WorkCards.write(a, f), out)
                    + timed("survey-record", f -> SurveyRecord.write(a, insights, f), out)
                    + timed("drill-template", f -> DrillTemplate.tiles(a, f), out)
                    + timed("drill-template-sheet", f -> DrillTemplate.sheets(a, f), out);
            System.out.printf(" all %.2f s%n", all);
        }
    }

    private static double timed(String name, Writing writing, Path out) throws IOException {
        var threads = ManagementFactory.getThreadMXBean();
        long from = threads.getCurrentThreadCpuTime();
        writing.to(out.resolve(name + ".pdf"));
        double seconds = (threads.getCurrentThreadCpuTime() - from) / 1e9;
        System.out.printf(" %s %.2f", name, seconds);
        return seconds;
    }
}
