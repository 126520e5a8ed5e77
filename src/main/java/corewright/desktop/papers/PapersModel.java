package corewright.desktop.papers;

import corewright.assessment.Assessed;
import corewright.assessment.Progress;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.EditLog;
import corewright.desktop.state.Jobs;
import corewright.desktop.state.Steps;
import corewright.desktop.state.Workbench;
import corewright.report.Outputs;
import corewright.report.Papers;
import corewright.report.page.PdfPage;
import corewright.report.page.PdfPrint;
import corewright.store.Pictures;
import corewright.survey.Edit;
import corewright.survey.Part;
import corewright.survey.settings.Settings.Terms;
import corewright.survey.settings.Settings.Terms.Sheet;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which paper is looked at, which page of it, and where it is written to. Knows no window. */
public final class PapersModel {
    /** Longer side of a page's picture: an A4 page at some 130 dpi. */
    /** Where writing begins on the scale of a whole run. */
    private static final double WRITTEN_FROM = 0.60;

    private static final int LONGER_SIDE = 1500;

    /**
     * A page as it will print.
     *
     * @param number from 1
     */
    public record Page(Papers paper, int number, int pages, BufferedImage picture) {}

    private final Workbench bench;
    private final Runnable tell;
    private final Map<Papers, Path> written = new EnumMap<>(Papers.class);
    private Papers paper = Papers.OWNER_REPORT;
    private int number = 1;
    private @Nullable Assessed shownOf;
    private @Nullable Page page;
    private @Nullable Path drafts;
    private Jobs.Job job = () -> {};
    private String wished = "";
    private String busy = "";
    private @Nullable Path last;
    private @Nullable List<String> printers;

    /** @param tell when a page is there, or a file is written */
    public PapersModel(Workbench bench, Runnable tell) {
        this.bench = bench;
        this.tell = tell;
    }

    /** On what the papers wait. */
    String waits() {
        boolean unread =
                bench.survey().filter(s -> Steps.nothingRead(s.readings())).isPresent();
        return unread ? "Papers follow when something is read" : "Papers follow when the calculation is through";
    }

    /** Papers can be made: everything is found and belongs to the survey as it is. */
    public boolean ready() {
        return bench.assessed().isPresent();
    }

    public Papers paper() {
        return paper;
    }

    /** Looks at another paper, from its first page. */
    public void choose(Papers other) {
        paper = other;
        number = 1;
        look();
        tell.run();
    }

    /** Turns the page, as far as there are any. */
    public void turn(int by) {
        Page now = page;
        int pages = now == null || now.paper != paper ? 1 : now.pages;
        number = Math.max(1, Math.min(pages, number + by));
        look();
        tell.run();
    }

    /** Has the page made where it is not there; in the background. */
    public void look() {
        Assessed assessed = bench.assessed().orElse(null);
        if (assessed == null) {
            return;
        }
        if (shownOf == null || shownOf.assessment() != assessed.assessment()) {
            shownOf = assessed;
            written.clear();
            page = null;
            wished = "";
        }
        Pictures pictures = pictures();
        Papers of = paper;
        int which = number;
        String wish = of + " " + which;
        if (wish.equals(wished)) {
            return;
        }
        wished = wish;
        job.cancel();
        Path draft = written.get(of);
        job = bench.jobs()
                .run(
                        () -> {
                            Path file = draft == null ? draft(assessed, pictures, of) : draft;
                            int pages = PdfPage.count(file);
                            int at = Math.min(which, pages);
                            return new Drawn(file, new Page(of, at, pages, PdfPage.picture(file, at, LONGER_SIDE)));
                        },
                        drawn -> take(wish, drawn),
                        e -> failed(wish, e));
    }

    /** Photographs and logo, from where the survey is kept. */
    private Pictures pictures() {
        EditLog log = bench.log();
        return log == null ? Pictures.NONE : log::picture;
    }

    private record Drawn(Path file, Page page) {}

    private void take(String wish, Drawn drawn) {
        if (wish.equals(wished)) {
            written.put(drawn.page.paper, drawn.file);
            page = drawn.page;
            number = drawn.page.number;
            tell.run();
        }
    }

    private void failed(String wish, Exception e) {
        if (wish.equals(wished)) {
            wished = "";
            bench.say("The page cannot be shown: " + Complaints.sentence(e));
        }
    }

    private synchronized Path draft(Assessed assessed, Pictures pictures, Papers of) throws IOException {
        Path folder = drafts;
        if (folder == null) {
            folder = Files.createTempDirectory(Path.of(System.getProperty("java.io.tmpdir")), "corewright-papers");
            folder.toFile().deleteOnExit();
            drafts = folder;
        }
        Path file = Files.createTempFile(folder, "page", ".pdf");
        file.toFile().deleteOnExit();
        of.write(assessed, pictures, file);
        return file;
    }

    /** The page that is looked at, once it is made. */
    public Optional<Page> page() {
        Page now = page;
        boolean right = now != null && now.paper == paper && now.number == number && shownOf != null && ready();
        return right ? Optional.ofNullable(now) : Optional.empty();
    }

    /** What is being written, empty where nothing is. */
    public String busy() {
        return busy;
    }

    /** What was written last and can be opened. */
    public Optional<Path> last() {
        return Optional.ofNullable(last);
    }

    /** Writes the paper that is looked at to a file. */
    public void save(Path file) {
        Assessed assessed = bench.assessed().orElse(null);
        if (assessed == null) {
            return;
        }
        Pictures pictures = pictures();
        Papers of = paper;
        begin("Writing " + file.getFileName());
        bench.waiting()
                .on(
                        busy,
                        progress -> {
                            Path near =
                                    Files.createTempFile(file.toAbsolutePath().getParent(), ".corewright", ".pdf");
                            try {
                                of.write(assessed, pictures, near);
                                progress.begin("putting it in place", 0.99); // not where it was stopped
                                return Files.move(near, file, StandardCopyOption.REPLACE_EXISTING);
                            } finally {
                                Files.deleteIfExists(near);
                            }
                        },
                        this::done,
                        this::notDone);
    }

    /** Printers of the system; empty where it has none, or has not answered yet. */
    public List<String> printers() {
        List<String> known = printers;
        if (known != null) {
            return known;
        }
        printers = List.of();
        bench.jobs()
                .run(
                        PdfPrint::printers,
                        names -> {
                            printers = names;
                            tell.run();
                        },
                        e -> bench.say("Printers cannot be asked for: " + Complaints.sentence(e)));
        return List.of();
    }

    /** Prints the paper that is looked at, at 100 %. */
    public void print(String printer) {
        Path draft = written.get(paper);
        if (draft == null) {
            return;
        }
        begin("Printing " + paper.title());
        String title = paper.title();
        bench.jobs()
                .run(
                        () -> {
                            PdfPrint.print(draft, printer);
                            return title;
                        },
                        done -> {
                            busy = "";
                            bench.say("Sent to " + printer + ": " + done
                                    + ". Check the scale by the rule on the sheet before anything is drilled.");
                        },
                        this::notDone);
    }

    /** The sheet that reports are set for. */
    public Sheet sheet() {
        return bench.survey().map(s -> s.settings().terms().paper()).orElse(Sheet.A4);
    }

    /** Sets reports for another sheet. */
    public void sheet(Sheet other) {
        bench.edit("paper " + (other == Sheet.LETTER ? "Letter" : other.name()), s -> {
            Terms t = s.settings().terms();
            return t.paper() == other
                    ? null
                    : Edit.put(Part.SETTINGS, s.settings().with(new Terms(t.display(), t.decimal(), t.csv(), other)));
        });
    }

    /** Writes everything that the command {@code run} writes, by the same door. */
    public void writeAll(Path folder) {
        Assessed assessed = bench.assessed().orElse(null);
        if (assessed == null) {
            return;
        }
        Pictures pictures = pictures();
        begin("Writing everything to " + folder.getFileName());
        bench.waiting()
                .on(
                        busy,
                        progress -> {
                            Outputs.check(folder);
                            Progress written = (stage, fraction) ->
                                    progress.begin(stage, (fraction - WRITTEN_FROM) / (1 - WRITTEN_FROM));
                            Outputs.write(assessed, pictures, folder, written, Map::of);
                            return folder;
                        },
                        this::done,
                        this::notDone);
    }

    private void begin(String words) {
        busy = words;
        last = null;
        tell.run();
    }

    private void done(Path file) {
        busy = "";
        last = file;
        bench.say("Written: " + file + ".");
        tell.run();
    }

    private void notDone(Exception e) {
        busy = "";
        bench.say("Not written: " + Complaints.sentence(e));
        tell.run();
    }
}
