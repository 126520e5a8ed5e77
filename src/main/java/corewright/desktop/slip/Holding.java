package corewright.desktop.slip;

import java.util.List;
import java.util.Optional;

/** Everything that a touch may take up; at most one thing is held. */
public final class Holding {
    private List<Held> things = List.of();

    /** Asked in this order from now on. */
    public void of(List<Held> others) {
        things = List.copyOf(others);
    }

    /** Takes up what lies at a place; whatever else was held is let go. */
    public boolean touch(double xMm, double yMm) {
        boolean taken = false;
        for (Held one : things) {
            if (taken) {
                one.letGo();
            } else {
                taken = one.touch(xMm, yMm);
            }
        }
        return taken;
    }

    /** What is held. */
    public Optional<Held> held() {
        return things.stream().filter(h -> h.slip().isPresent()).findFirst();
    }

    public void letGo() {
        things.forEach(Held::letGo);
    }
}
