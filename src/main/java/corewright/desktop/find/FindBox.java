package corewright.desktop.find;

import corewright.desktop.find.Finder.Found;
import corewright.desktop.state.Step;
import corewright.desktop.state.Workbench;
import java.util.List;
import javafx.geometry.Side;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;

/** The field that finds: Enter goes to what is called exactly so, else lists what it may be. */
public final class FindBox extends TextField {
    private final Workbench bench;
    private final Runnable toPlan;
    private final ContextMenu choices = new ContextMenu();

    /** @param toPlan gives the plan the keys */
    public FindBox(Workbench bench, Runnable toPlan) {
        this.bench = bench;
        this.toPlan = toPlan;
        setPromptText("Find: R1, E s2");
        setId("find");
        setAccessibleText("Find a region, a feature, a hole, a panel, a reading, a finding or a place, for example E,"
                + " starboard 2");
        setPrefColumnCount(9);
        choices.setId("find-choices");
        setOnAction(e -> find());
    }

    private void find() {
        List<Found> found =
                bench.shown().map(a -> Finder.find(a, bench.face(), getText())).orElse(List.of());
        choices.hide();
        if (found.isEmpty()) {
            bench.say("Nothing is called \"" + getText().strip() + "\"; say a region, a hole, a name on the plan, a"
                    + " reading, or a place such as E, starboard 2.");
        } else if (found.size() == 1 || found.get(0).exact() && !found.get(1).exact()) {
            go(found.get(0));
        } else {
            choices.getItems().setAll(found.stream().map(this::choice).toList());
            choices.show(this, Side.BOTTOM, 0, 0);
        }
    }

    private MenuItem choice(Found found) {
        MenuItem item = new MenuItem(found.what());
        item.setMnemonicParsing(false);
        item.setOnAction(e -> go(found));
        return item;
    }

    private void go(Found found) {
        Step step = bench.sight().step();
        if (step == Step.STIFFNESS || step == Step.PAPERS) {
            bench.sight().go(Step.DAMAGE); // there is no plan to point at
        }
        bench.select(found.region());
        bench.goTo(found.spot());
        bench.sight().mark(found.spot(), found.name());
        bench.say(found.what() + ".");
        toPlan.run();
    }
}
