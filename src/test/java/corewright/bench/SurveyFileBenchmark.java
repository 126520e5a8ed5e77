package corewright.bench;

import corewright.GeneratedSurveys;
import corewright.intake.SurveyFolder;
import corewright.store.FolderWriter;
import corewright.store.Pictures;
import corewright.store.SurveyFile;
import corewright.survey.Edit;
import corewright.survey.Moisture;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Times a survey of 300 000 moisture readings with all their digits: folder in, file written, opened, edited. Run: {@code mvn -o -q test-compile
 * exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.bench.SurveyFileBenchmark}.
 */
public final class SurveyFileBenchmark {
    private static final int READINGS = 300_000;
    private static final int EDITS = 60;

    private SurveyFileBenchmark() {}

    public static void main(String[] args) throws Exception {
        Path dir = Files.createTempDirectory("corewright-bench");
        Path folder = dir.resolve("survey");
        Survey survey = large();
        FolderWriter.write(survey, Pictures.NONE, folder);
        for (int run = 0; run < 3; run++) {
            Path path = dir.resolve("survey-" + run + ".gpkg");
            time("folder read", () -> SurveyFolder.read(folder));
            time("file written", () -> SurveyFile.create(path, survey));
            time("file read", () -> SurveyFile.read(path));
            try (SurveyFile file = opened(path)) {
                edits(file);
            }
            System.out.printf(Locale.ROOT, "size %.1f MB%n", Files.size(path) * 1e-6);
            Files.delete(path);
        }
    }

    private static SurveyFile opened(Path path) throws Exception {
        SurveyFile[] file = new SurveyFile[1];
        time("file opened for work", () -> file[0] = SurveyFile.open(path));
        return file[0];
    }

    /** Added at the end, put into the middle, exchanged anywhere, taken back. */
    private static void edits(SurveyFile file) throws Exception {
        Random random = new Random(1);
        double[] ms = new double[EDITS];
        for (int i = 0; i < EDITS; i++) {
            Survey now = file.survey();
            List<Moisture> readings = now.readings().moisture();
            Moisture any = readings.get(random.nextInt(readings.size()));
            Edit edit =
                    switch (i % 4) {
                        case 0 -> Edit.add(now, Part.MOISTURE, any);
                        case 1 -> new Edit.Insert<>(Part.MOISTURE, READINGS / 2, any);
                        case 2 -> new Edit.Replace<>(Part.MOISTURE, random.nextInt(READINGS), any);
                        default -> null;
                    };
            long start = cpuNs();
            if (edit == null) {
                file.undo();
            } else {
                file.append(edit);
            }
            ms[i] = (cpuNs() - start) * 1e-6;
        }
        Arrays.sort(ms);
        System.out.printf(
                Locale.ROOT,
                "one edit: median %.1f ms, nine of ten within %.1f ms, largest %.1f ms of processor time%n",
                ms[EDITS / 2],
                ms[EDITS * 9 / 10],
                ms[EDITS - 1]);
    }

    private static Survey large() {
        GeneratedSurveys generated = new GeneratedSurveys(1);
        Survey small = generated.survey(100);
        Random random = new Random(2);
        List<Moisture> like = small.readings().moisture();
        List<Moisture> all = new ArrayList<>();
        for (int i = 0; i < READINGS; i++) {
            Moisture m = like.get(i % like.size());
            Spot spot = new Spot(m.spot().face(), 900 * random.nextDouble(), 900 * random.nextDouble());
            all.add(new Moisture(
                    m.origin(),
                    "M" + i,
                    spot,
                    60 * random.nextDouble(),
                    m.offScale(),
                    m.meter(),
                    m.temperatureC(),
                    m.taken(),
                    m.reference(),
                    m.side(),
                    m.note()));
        }
        return Part.MOISTURE.with(small, all);
    }

    /** Something to be timed. */
    private interface Work {
        void run() throws Exception;
    }

    private static void time(String what, Work work) throws Exception {
        long start = System.nanoTime();
        long cpu = cpuNs();
        work.run();
        System.out.printf(
                Locale.ROOT,
                "%s: %.2f s, %.2f s of processor time%n",
                what,
                (System.nanoTime() - start) * 1e-9,
                (cpuNs() - cpu) * 1e-9);
    }

    /** Of this thread; steady on a machine that others use too. */
    private static long cpuNs() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
