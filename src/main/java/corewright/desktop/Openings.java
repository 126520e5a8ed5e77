package corewright.desktop;

import corewright.desktop.imports.ImportModel;
import corewright.desktop.imports.ImportView;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Kept;
import corewright.desktop.state.NewSurvey;
import corewright.desktop.state.Recent;
import corewright.desktop.state.Steps;
import corewright.desktop.state.SurveyOpener;
import corewright.desktop.state.Units;
import corewright.desktop.state.Workbench;
import corewright.intake.CsvImport;
import corewright.survey.Survey;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.locationtech.jts.geom.Envelope;

/** The ways a survey comes into the window: opened, begun anew, or made round readings that are brought in. */
final class Openings {
    /** Deck kept round readings that came without a plan. */
    private static final double MARGIN_MM = 100;

    private final Workbench bench;
    private final Chooser chooser;
    private final Recent recent;
    private final MainView view;
    private final Runnable back;
    private final Consumer<List<Path>> lately;

    /**
     * @param back gives the window back to the plan
     * @param lately told what was open lately
     */
    Openings(
            Workbench bench,
            Chooser chooser,
            Recent recent,
            MainView view,
            Runnable back,
            Consumer<List<Path>> lately) {
        this.bench = bench;
        this.chooser = chooser;
        this.recent = recent;
        this.view = view;
        this.back = back;
        this.lately = lately;
    }

    /**
     * Opens a survey; where it is a folder that was edited before, asks first which of the two is meant.
     *
     * @param source what gives the survey at that path
     */
    void open(Path path, Callable<EditLog> source) {
        bench.jobs()
                .run(
                        () -> Kept.beside(SurveyOpener.folder(path)),
                        edited -> edited.ifPresentOrElse(file -> offer(path, source, file), () -> read(path, source)),
                        e -> read(path, source));
    }

    private void offer(Path folder, Callable<EditLog> source, Path file) {
        view.task(new EditedBefore(
                file,
                () -> {
                    back.run();
                    read(file, () -> SurveyOpener.open(file));
                },
                () -> {
                    back.run();
                    read(folder, source);
                }));
    }

    private void read(Path path, Callable<EditLog> source) {
        bench.open(String.valueOf(path.getFileName()), () -> {
            EditLog log = source.call();
            opened(path);
            return log;
        });
    }

    private void opened(Path path) {
        recent.opened(path);
        List<Path> now = recent.list();
        bench.jobs().onWindow(() -> lately.accept(now));
    }

    void startNew() {
        view.task(new NewView(bench.sight().units(), this::startNew, back));
    }

    private void startNew(String name, String face, Envelope box) {
        create(name, NewSurvey.of(name, face, today(), box));
    }

    /** Asks where to, writes the survey there and opens it. */
    void create(String name, Survey survey) {
        String proposed = name.replaceAll("[^\\p{L}0-9]+", "-") + ".gpkg";
        chooser.newFile("Where to keep the survey", proposed).ifPresent(file -> {
            back.run();
            bench.open(String.valueOf(file.getFileName()), () -> {
                EditLog log = SurveyOpener.create(file, survey);
                opened(file);
                return log;
            });
        });
    }

    void importCsv() {
        chooser.file("Bring in readings", "CSV", "*.csv", "*.txt", "*.tsv").ifPresent(this::importCsv);
    }

    private void importCsv(Path file) {
        Survey into = bench.survey().orElseGet(() -> NewSurvey.of("", "deck", today(), new Envelope(0, 1, 0, 1)));
        Units units = bench.sight().units();
        bench.waiting()
                .on(
                        "Reading " + file.getFileName(),
                        progress -> ImportModel.of(file, into, units),
                        model -> {
                            bench.hold(true);
                            view.task(new ImportView(model, into, () -> take(model), back));
                        },
                        e -> bench.say(Complaints.sentence(e)));
    }

    /** Into the survey that is open, or into a new one whose outline lies round the readings until it is drawn. */
    private void take(ImportModel model) {
        if (bench.survey().isPresent()) {
            bench.say("Writing " + Steps.counted(model.good(), "reading") + " into the survey.");
            bench.edit(model.deed(), model::edit);
            back.run();
            return;
        }
        Envelope box = new Envelope();
        CsvImport.all(model.readings())
                .forEach(r -> box.expandToInclude(r.spot().coordinate()));
        box.expandBy(MARGIN_MM);
        Survey empty = NewSurvey.of(model.deed().replace("import of ", ""), "deck", today(), box);
        create(empty.heading().name(), model.edit(empty).apply(empty));
    }

    private static LocalDate today() {
        return LocalDate.now(ZoneId.systemDefault());
    }
}
