package corewright.desktop;

import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.Method;
import corewright.desktop.decide.DecideDesk;
import corewright.desktop.holes.HolesDesk;
import corewright.desktop.owner.OwnerPane;
import corewright.desktop.papers.PapersDesk;
import corewright.desktop.slip.Held;
import corewright.desktop.slip.SlipView;
import corewright.desktop.state.Complaints;
import corewright.desktop.state.Step;
import corewright.desktop.state.Workbench;
import corewright.desktop.stiffness.StiffnessDesk;
import corewright.desktop.work.FillCheckDesk;
import corewright.desktop.work.WorkModel;
import corewright.desktop.work.WorkView;
import corewright.drawing.kit.Measure;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/** The steps after the map: deciding, stiffness, papers. */
final class SecondHalf {
    private final Workbench bench;
    private final DecideDesk decide;
    private final StiffnessDesk stiffness;
    private final HolesDesk holes;
    private final PapersDesk papers;
    private final FillCheckDesk check;
    private final MainView view;
    private @Nullable WorkView working;

    SecondHalf(Workbench bench, MainView view, Chooser chooser, Consumer<Path> viewer) {
        this.bench = bench;
        this.view = view;
        bench.listen(this::follow);
        decide = new DecideDesk(bench, view::refresh, view::wideSlip, view::roomy);
        stiffness = new StiffnessDesk(bench, view.plan(), view::refresh);
        holes = new HolesDesk(bench, view.plan(), view::refresh);
        check = new FillCheckDesk(bench, view.plan());
        papers = new PapersDesk(bench, new Outside(chooser, viewer), view::refresh, this::showOwner);
    }

    private record Outside(Chooser chooser, Consumer<Path> viewer) implements PapersDesk.Outside {
        @Override
        public Optional<Path> file(String title, String proposed) {
            return chooser.newFile(title, proposed);
        }

        @Override
        public Optional<Path> folder(String title) {
            return chooser.folder(title);
        }

        @Override
        public void view(Path file) {
            viewer.accept(file);
        }
    }

    /** What stands in place of the plan; null where the plan does. */
    @Nullable
    Node middle(Step step) {
        if (step != Step.STIFFNESS) {
            stiffness.leave();
        }
        if (step != Step.REPAIR || bench.region().isEmpty()) {
            holes.close();
        } else if (holes.isOpen()) {
            holes.follow();
        }
        return switch (step) {
            case STIFFNESS -> stiffness.middle();
            case PAPERS -> papers.middle();
            default -> null;
        };
    }

    /** What stands under plan and slip over the window's width; null where nothing does. */
    @Nullable
    Node below(Step step) {
        return step == Step.REPAIR && !onHoles() && view.roomy() ? decide.strip() : null;
    }

    boolean onHoles() {
        return holes.isOpen() || check.isOpen();
    }

    Node[] actions(Step step) {
        return switch (step) {
            case REPAIR -> repair();
            case STIFFNESS -> stiffness.actions();
            case PAPERS -> papers.actions();
            default -> new Node[0];
        };
    }

    private Node[] repair() {
        if (holes.isOpen()) {
            return holes.actions();
        }
        List<Node> all = new ArrayList<>(List.of(decide.actions()));
        if (holes.model().plan().isPresent()) {
            boolean decided = bench.region()
                    .flatMap(r -> bench.found().map(a -> a.decision().injections().stream()
                            .anyMatch(p -> p.part(r.id()).isPresent())))
                    .orElse(false);
            if (decided || injectionOffered()) { // nobody is to plan holes into what mix will not bond to
                all.add(SlipView.key("plan-holes", "Plan the holes", holes::open));
            }
            if (decided) {
                all.add(SlipView.key("work", "Work at the boat", this::work));
                all.add(SlipView.key("fill-check", "Check the fill", check::open));
            }
        }
        return all.toArray(Node[]::new);
    }

    private boolean injectionOffered() {
        return decide.model()
                .region()
                .map(r -> decide.model().rows(r).stream().anyMatch(w -> w.method() == Method.INJECT && w.offered()))
                .orElse(false);
    }

    /** A method was touched beside the map: it is decided in the step Repair. */
    void want(Method method) {
        bench.sight().go(Step.REPAIR);
        decide.want(method);
    }

    /** Work at the boat on the region selected. */
    void work() {
        Region region = bench.region().orElse(null);
        if (region == null) {
            return;
        }
        WorkModel model = new WorkModel(bench, region.id(), () -> System.nanoTime() / 1e9);
        model.freeze();
        WorkView shown = new WorkView(
                model,
                bench.survey().orElseThrow().face(region.face()),
                bench.sight().appearance().look(),
                () -> {
                    working = null;
                    view.task(null);
                },
                bench::undo);
        working = shown;
        view.task(shown);
    }

    /** The owner's page over the whole window; worked out aside. */
    void showOwner() {
        Assessment found = bench.found().filter(a -> a.ages().fresh()).orElse(null);
        if (found == null) {
            return;
        }
        double sharpness = view.sharpness();
        String currency = found.survey().settings().costs().currency();
        bench.waiting()
                .on(
                        "Painting the owner's page",
                        progress -> OwnerPane.made(found, sharpness),
                        made -> view.task(
                                new OwnerPane(made, currency, Measure.of(found.survey()), () -> view.task(null))),
                        e -> bench.say("Not shown: " + Complaints.sentence(e)));
    }

    /** The survey or what is found of it is another. */
    private void follow() {
        WorkView shown = working;
        if (shown != null) {
            shown.show();
        }
    }

    boolean key(KeyEvent e) {
        return holes.key(e) || decide.key(e);
    }

    /** What the plan's touch may take up in these steps. */
    Held check() {
        return check;
    }

    HolesDesk holes() {
        return holes;
    }

    DecideDesk decide() {
        return decide;
    }

    StiffnessDesk stiffness() {
        return stiffness;
    }

    PapersDesk papers() {
        return papers;
    }
}
