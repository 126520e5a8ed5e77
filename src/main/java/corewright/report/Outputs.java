package corewright.report;

import corewright.assessment.Assessed;
import corewright.assessment.Assessment;
import corewright.assessment.Issued;
import corewright.assessment.Progress;
import corewright.damage.FaceDamage;
import corewright.damage.Insight;
import corewright.damage.InsightWork;
import corewright.damage.Surfaces;
import corewright.decision.LeftToDo;
import corewright.repair.plan.Batch;
import corewright.report.cards.WorkCards;
import corewright.report.data.AsciiGrid;
import corewright.report.data.BatchesCsv;
import corewright.report.data.BuyingListCsv;
import corewright.report.data.CupsCsv;
import corewright.report.data.DryingCsv;
import corewright.report.data.Exchange;
import corewright.report.data.FindingsCsv;
import corewright.report.data.FootLoadCsv;
import corewright.report.data.HolesCsv;
import corewright.report.data.NextReadingsCsv;
import corewright.report.data.OptionsCsv;
import corewright.report.data.RegionsGeoJson;
import corewright.report.data.ScheduleCsv;
import corewright.report.data.SecondShotsCsv;
import corewright.report.data.SummaryJson;
import corewright.report.data.WhatWouldChangeCsv;
import corewright.report.data.WorkCsv;
import corewright.report.owner.OwnerReport;
import corewright.report.page.FileNames;
import corewright.report.page.PlateFiles;
import corewright.report.record.SurveyRecord;
import corewright.report.template.DrillTemplate;
import corewright.store.Pictures;
import corewright.store.RepairPlanText;
import corewright.survey.settings.Settings.Terms;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Writes everything a run leaves behind. */
public final class Outputs {
    private Outputs() {}

    /**
     * Whether outputs may go to this folder, asked before the work begins.
     *
     * @throws IOException a sentence, where the folder is a file or holds what is not ours
     */
    public static void check(Path folder) throws IOException {
        Destination.check(folder);
    }

    /**
     * Writes the folder, whole or not at all.
     *
     * @param timingsMs asked for last: stage → milliseconds
     * @return the text of summary.json
     */
    public static String write(
            Assessment assessment, Path folder, Progress progress, Supplier<Map<String, Long>> timingsMs)
            throws IOException {
        return write(assessment, Map.of(), Pictures.NONE, folder, progress, timingsMs);
    }

    /**
     * The same of an assessment that was just made, with a check of its map against its readings.
     *
     * @param pictures photographs and logo
     */
    public static String write(
            Assessed assessed, Pictures pictures, Path folder, Progress progress, Supplier<Map<String, Long>> timingsMs)
            throws IOException {
        return write(assessed.assessment(), insights(assessed), pictures, folder, progress, timingsMs);
    }

    /** The check of every map against its readings. */
    static Map<String, Insight> insights(Assessed assessed) {
        Assessment assessment = assessed.assessment();
        Map<String, Insight> insights = new HashMap<>();
        if (!assessment.verdict().withheld()) {
            for (FaceDamage face : assessment.damage().faces()) {
                insights.put(
                        face.face().name(),
                        InsightWork.of(face, assessed.earlier().parameters()));
            }
        }
        return insights;
    }

    private static String write(
            Assessment assessment,
            Map<String, Insight> insights,
            Pictures pictures,
            Path folder,
            Progress progress,
            Supplier<Map<String, Long>> timingsMs)
            throws IOException {
        try (Destination destination = new Destination(folder);
                SideBySide side = new SideBySide()) {
            Path work = destination.work();
            progress.begin("tables", 0.60);
            tables(assessment, work);
            surfaces(assessment, Files.createDirectory(work.resolve("surfaces")));
            Exchange.write(assessment, Files.createDirectory(work.resolve("exchange")));
            progress.begin("maps", 0.65);
            Path plates = Files.createDirectory(work.resolve("maps"));
            SideBySide.Begun maps = side.begin(() -> PlateFiles.write(assessment, plates));
            List<SideBySide.Begun> papers = List.of( // those that take longest first
                    side.begin(() ->
                            SurveyRecord.write(assessment, insights, pictures, work.resolve("survey-record.pdf"))),
                    side.begin(() -> DrillTemplate.tiles(assessment, work.resolve("drill-template.pdf"))),
                    side.begin(() -> WorkCards.write(assessment, work.resolve("work-cards.pdf"))),
                    side.begin(() -> DrillTemplate.sheets(assessment, work.resolve("drill-template-sheet.pdf"))));
            SideBySide.Begun owner =
                    side.begin(() -> OwnerReport.write(assessment, pictures, work.resolve("owner-report.pdf")));
            maps.await();
            progress.begin("owner's report", 0.90);
            owner.await();
            progress.begin("work cards", 0.95);
            for (SideBySide.Begun paper : papers) {
                paper.await();
            }
            progress.begin("summary", 0.99);
            String summary = SummaryJson.text(assessment, timingsMs.get());
            text(work.resolve(Destination.MARKER), summary);
            destination.finish();
            return summary;
        } catch (FileSystemException e) {
            throw e;
        } catch (IOException e) { // such as a full disk, of which the system does not say where
            throw new FileSystemException(
                    folder.toString(),
                    null,
                    "the outputs could not be written (" + e.getMessage()
                            + "); nothing is left there. Make room, or name another folder");
        }
    }

    private static void tables(Assessment assessment, Path work) throws IOException {
        Terms.Sign sign = assessment.survey().settings().terms().csv();
        text(work.resolve("regions.geojson"), RegionsGeoJson.text(assessment));
        HolesCsv.of(assessment).write(work.resolve("holes.csv"), sign);
        BatchesCsv.of(assessment).write(work.resolve("batches.csv"), sign);
        CupsCsv.of(assessment).write(work.resolve("cups.csv"), sign);
        ScheduleCsv.of(assessment).write(work.resolve("schedule.csv"), sign);
        BuyingListCsv.of(assessment).write(work.resolve("buying-list.csv"), sign);
        FindingsCsv.of(assessment).write(work.resolve("findings.csv"), sign);
        DryingCsv.of(assessment).write(work.resolve("drying.csv"), sign);
        FootLoadCsv.of(assessment).write(work.resolve("foot-load.csv"), sign);
        Issued issued = Issued.of(assessment.survey(), assessment.damage(), assessment.decision());
        text(work.resolve(RepairPlanText.NAME), RepairPlanText.of(issued.plan()));
        OptionsCsv.of(assessment).write(work.resolve("options.csv"), sign);
        NextReadingsCsv.of(assessment).write(work.resolve("next-readings.csv"), sign);
        WhatWouldChangeCsv.of(assessment).write(work.resolve("what-would-change.csv"), sign);
        if (!assessment.work().progress().isEmpty()) {
            WorkCsv.done(assessment).write(work.resolve("work-done.csv"), sign);
            WorkCsv.left(assessment).write(work.resolve("work-left.csv"), sign);
            WorkCsv.warmth(assessment).write(work.resolve("fill-check.csv"), sign);
            left(assessment, Files.createDirectory(work.resolve("left")), sign);
        }
        if (SecondShotsCsv.wanted(assessment)) {
            SecondShotsCsv.of(assessment).write(work.resolve("second-shots.csv"), sign);
        }
    }

    private static void left(Assessment assessment, Path folder, Terms.Sign sign) throws IOException {
        LeftToDo left = assessment.left();
        List<Batch> cups =
                left.plans().stream().flatMap(p -> p.batches().stream()).toList();
        BatchesCsv.of(cups).write(folder.resolve("batches.csv"), sign);
        CupsCsv.of(cups).write(folder.resolve("cups.csv"), sign);
        ScheduleCsv.left(assessment, left.plans()).write(folder.resolve("schedule.csv"), sign);
        BuyingListCsv.of(left.buying()).write(folder.resolve("buying-list.csv"), sign);
    }

    private static void surfaces(Assessment assessment, Path folder) throws IOException {
        Map<String, String> names = FileNames.of(
                assessment.damage().faces().stream().map(f -> f.face().name()).toList());
        for (FaceDamage face : assessment.damage().faces()) {
            String name = names.get(face.face().name());
            Surfaces surfaces = face.surfaces();
            AsciiGrid.write(surfaces.moistureIndex(), folder.resolve(name + "-moisture.asc"));
            AsciiGrid.write(surfaces.pWet(), folder.resolve(name + "-p_wet.asc"));
            AsciiGrid.write(surfaces.pLoose(), folder.resolve(name + "-p_delaminated.asc"));
            AsciiGrid.write(surfaces.voidDepthMm(), folder.resolve(name + "-void_depth_mm.asc"));
            AsciiGrid.write(surfaces.voidDepthSdMm(), folder.resolve(name + "-void_depth_sd_mm.asc"));
        }
    }

    private static void text(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }
}
