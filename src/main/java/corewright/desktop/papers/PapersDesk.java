package corewright.desktop.papers;

import corewright.desktop.plan.Pixels;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Workbench;
import corewright.report.Papers;
import corewright.survey.settings.Settings.Terms;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** The step Papers: a page in the middle, in the slip which paper and where to. */
public final class PapersDesk {
    /** Asks where to, and shows a file in the system's viewer. */
    public interface Outside {
        Optional<Path> file(String title, String proposed);

        Optional<Path> folder(String title);

        void view(Path file);
    }

    private static final int MOST_PRINTERS = 3;

    private final PapersModel model;
    private final Outside outside;
    private final Runnable owner;
    private final BorderPane middle = new BorderPane();
    private final Sheet sheet = new Sheet();
    private final Label which = new Label();
    private final Button back = SlipView.key("page-back", "Page back", () -> turn(-1));
    private final Button next = SlipView.key("page-next", "Next page", () -> turn(1));
    private PapersModel.@Nullable Page shown;

    /** @param owner shows the owner's view */
    public PapersDesk(Workbench bench, Outside outside, Runnable tell, Runnable owner) {
        model = new PapersModel(bench, tell);
        this.outside = outside;
        this.owner = owner;
        which.setId("page-number");
        which.getStyleClass().add("head");
        HBox head = new HBox(16, back, which, next);
        head.setAlignment(Pos.CENTER);
        head.getStyleClass().add("papers-head");
        middle.setTop(head);
        middle.setCenter(sheet);
        middle.getStyleClass().add("papers");
        middle.setId("papers");
    }

    private void turn(int by) {
        model.turn(by);
    }

    public PapersModel model() {
        return model;
    }

    /** The page; nothing moves while it is made. */
    public Node middle() {
        model.look();
        PapersModel.Page page = model.page().orElse(null);
        if (page != null && page != shown) {
            sheet.show(page);
        }
        shown = page;
        String title = model.paper().title();
        which.setText(
                page != null
                        ? title + ", page " + page.number() + " of " + page.pages()
                        : model.ready() ? title + ": the page is being made" : model.waits());
        back.setVisible(page != null && page.number() > 1);
        next.setVisible(page != null && page.number() < page.pages());
        sheet.setVisible(page != null);
        return middle;
    }

    /** Which paper, where to, and what was written. */
    public Node[] actions() {
        List<Node> all = new ArrayList<>();
        if (!model.ready()) {
            return new Node[0];
        }
        for (Papers paper : Papers.values()) {
            Button key = SlipView.key(
                    "paper-" + paper.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    paper.title(),
                    () -> model.choose(paper));
            key.getStyleClass().add(paper == model.paper() ? "chosen" : "open-choice");
            all.add(key);
        }
        all.add(SlipView.text(
                "Print at 100 %, never fitted to the page: the rule on each sheet proves its scale.", "quiet"));
        if (!model.busy().isEmpty()) {
            all.add(SlipView.text(model.busy(), "head"));
        } else {
            Papers paper = model.paper();
            all.add(SlipView.key(
                    "paper-save", "Save this paper", () -> outside.file("Where to save " + paper.title(), paper.file())
                            .ifPresent(model::save)));
            all.add(SlipView.key(
                    "papers-all", "Write everything to a folder", () -> outside.folder("A new or empty folder")
                            .ifPresent(model::writeAll)));
            all.add(sheets());
            printers(all);
            model.last().ifPresent(file -> all.add(opening(file, outside::view)));
        }
        all.add(SlipView.key("owner-view", "Show it to the owner", owner));
        return all.toArray(Node[]::new);
    }

    /** Reports are set anew for another sheet; full-size templates keep their scale on either. */
    private HBox sheets() {
        HBox row = new HBox(8);
        for (Terms.Sheet sheet : List.of(Terms.Sheet.A4, Terms.Sheet.LETTER)) {
            String name = sheet == Terms.Sheet.LETTER ? "Letter" : "A4";
            Button key = SlipView.key("sheet-" + name.toLowerCase(Locale.ROOT), name, () -> model.sheet(sheet));
            key.setAccessibleText("Reports on " + name);
            key.getStyleClass().add(sheet == model.sheet() ? "chosen" : "open-choice");
            HBox.setHgrow(key, Priority.ALWAYS);
            row.getChildren().add(key);
        }
        return row;
    }

    private void printers(List<Node> all) {
        List<String> names = model.printers();
        if (names.isEmpty()) {
            all.add(SlipView.text(
                    "No printer answers on this computer: save the paper and print it elsewhere.", "quiet"));
        }
        names.stream()
                .limit(MOST_PRINTERS)
                .forEach(n -> all.add(SlipView.key("print-" + n, "Print on " + n, () -> model.print(n))));
    }

    private static Button opening(Path file, Consumer<Path> view) {
        return SlipView.key("paper-open", "Open " + file.getFileName(), () -> view.accept(file));
    }

    /** A page as large as the room allows. */
    private static final class Sheet extends Region {
        private static final double MARGIN = 16;

        private final ImageView view = new ImageView();
        private double ratio = 1;

        Sheet() {
            getChildren().add(view);
            getStyleClass().add("papers-sheet");
            setMinSize(100, 100);
        }

        void show(PapersModel.Page page) {
            view.setImage(Pixels.of(page.picture()).image());
            view.setSmooth(true);
            ratio = page.picture().getWidth() / (double) page.picture().getHeight();
            view.setAccessibleText(page.paper().title() + ", page " + page.number());
            requestLayout();
        }

        @Override
        protected void layoutChildren() {
            double h = Math.min(getHeight() - 2 * MARGIN, (getWidth() - 2 * MARGIN) / ratio);
            view.setFitHeight(h);
            view.setFitWidth(h * ratio);
            view.relocate((getWidth() - h * ratio) / 2, (getHeight() - h) / 2);
        }
    }
}
