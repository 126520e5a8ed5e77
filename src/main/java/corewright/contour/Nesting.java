package corewright.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/** Which hole belongs to which outline: the smallest that goes round it, as rings of one band do not cross. */
final class Nesting {
    private final List<Shell> shells = new ArrayList<>();
    private final List<LinearRing> loose = new ArrayList<>();

    /** An outline with its holes. */
    static final class Shell {
        private final LinearRing outline;
        private final List<LinearRing> holes = new ArrayList<>();
        private @Nullable IndexedPointInAreaLocator inside;

        Shell(LinearRing outline) {
            this.outline = outline;
        }

        LinearRing outline() {
            return outline;
        }

        List<LinearRing> holes() {
            return holes;
        }

        boolean isRound(LinearRing hole) {
            if (inside == null) {
                inside = new IndexedPointInAreaLocator(outline);
            }
            for (Coordinate place : hole.getCoordinates()) {
                int where = inside.locate(place);
                if (where != Location.BOUNDARY) { // rings may touch
                    return where == Location.INTERIOR;
                }
            }
            return false;
        }
    }

    /** Adds what goes round one connected area: its outline with the holes that touch it, or, without outline, holes in another. */
    void add(@Nullable LinearRing outline, List<LinearRing> holes) {
        if (outline == null) {
            loose.addAll(holes);
        } else {
            Shell shell = new Shell(outline);
            shell.holes.addAll(holes);
            shells.add(shell);
        }
    }

    /** Every outline with all its holes. */
    List<Shell> shells() {
        STRtree tree = new STRtree();
        shells.forEach(shell -> tree.insert(shell.outline.getEnvelopeInternal(), shell));
        for (LinearRing hole : loose) {
            around(hole, tree).holes.add(hole);
        }
        loose.clear();
        return shells;
    }

    private static Shell around(LinearRing hole, STRtree tree) {
        List<Shell> candidates = new ArrayList<>();
        Envelope extent = hole.getEnvelopeInternal();
        tree.query(extent, found -> {
            Shell shell = (Shell) found;
            if (shell.outline.getEnvelopeInternal().covers(extent)) {
                candidates.add(shell);
            }
        });
        candidates.sort(Comparator.comparingDouble(
                shell -> shell.outline.getEnvelopeInternal().getArea()));
        return candidates.stream()
                .filter(shell -> shell.isRound(hole))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalStateException("no outline goes round the hole at " + hole.getCoordinate()));
    }
}
