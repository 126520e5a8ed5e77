package corewright.stiffness;

import corewright.overlay.Overlay;
import corewright.overlay.Pieces;
import corewright.sandwich.spec.Load;
import corewright.survey.DeckLoad;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.util.LineStringExtracter;

/**
 * The loads of a face shared out among its panels. A force is spread over what of its area or line lies on panels, and
 * each carries its part; a piece under a thousandth of the load and of the panel is a crumb, carried by the rest; pressure acts where it lies; a moment is carried by the panel with most of its area.
 */
final class CaseLoads {
    private static final double MPA_PER_KPA = 1e-3;

    /** Part of a load's area below which a piece is a crumb of the drawing: a tape's millimetre along a side of a metre. */
    private static final double CRUMB = 1e-3;

    private final List<DeckPanel> panels;
    private final List<DeckLoad> loads;

    /** @param panels all of one face */
    CaseLoads(List<DeckPanel> panels, List<DeckLoad> loads) {
        this.panels = List.copyOf(panels);
        this.loads = loads.stream()
                .filter(l -> panels.stream().anyMatch(p -> p.face().equals(l.face())))
                .toList();
    }

    /** Loads by case, those that reach the panel; in the survey's order. */
    Map<String, List<Load>> on(DeckPanel panel) {
        Map<String, List<Load>> cases = new LinkedHashMap<>();
        for (DeckLoad load : loads) {
            List<Load> shares = shares(load, panel);
            if (!shares.isEmpty()) {
                cases.computeIfAbsent(load.loadCase(), name -> new ArrayList<>())
                        .addAll(shares);
            }
        }
        return cases;
    }

    /** Loads that no panel carries. */
    List<DeckLoad> off() {
        return loads.stream()
                .filter(l -> panels.stream().allMatch(p -> shares(l, p).isEmpty()))
                .toList();
    }

    private List<Load> shares(DeckLoad load, DeckPanel panel) {
        Geometry part = part(load, panel);
        double size = size(part);
        if (!(size > 0)) {
            return List.of();
        }
        double all = panels.stream().mapToDouble(p -> size(part(load, p))).sum();
        double crumbs = panels.stream().mapToDouble(p -> size(whole(load, p))).sum() / all;
        List<Load> shares = new ArrayList<>();
        if (load.area() instanceof Lineal) {
            for (Object line : LineStringExtracter.getLines(part)) {
                LineString piece = (LineString) line;
                shares.add(new Load.Line(piece, load.forceN() * piece.getLength() / all));
            }
            return shares;
        }
        double force = load.forceN() * size / all + load.pressureKPa() * MPA_PER_KPA * size * crumbs;
        if (force != 0) {
            shares.add(new Load.Force(part, force));
        }
        boolean moment = load.momentXNmm() != 0 || load.momentYNmm() != 0;
        if (moment && panels.stream().allMatch(p -> size(part(load, p)) <= size)) {
            shares.add(new Load.Moment(part, load.momentXNmm(), load.momentYNmm()));
        }
        return shares;
    }

    /** What a panel carries of a load: pieces large enough to bear on it. What crumbs would carry is shared out to the rest. */
    private static Geometry part(DeckLoad load, DeckPanel panel) {
        Geometry part = whole(load, panel);
        double least = CRUMB * Math.min(size(load.area()), size(panel.area()));
        return size(part) > (load.area() instanceof Lineal ? 0 : least)
                ? part
                : part.getFactory().createEmpty(2);
    }

    /** Of an area only what is area on the panel, of a line what is line: one that touches a panel's edge bears on nothing there. */
    private static Geometry whole(DeckLoad load, DeckPanel panel) {
        Geometry part = Overlay.intersection(load.area(), panel.area());
        return load.area() instanceof Lineal
                ? part.getFactory().buildGeometry(LineStringExtracter.getLines(part))
                : Pieces.areal(part);
    }

    /** Area in mm², or the length of a line in mm. */
    private static double size(Geometry part) {
        return part instanceof Lineal ? part.getLength() : part.getArea();
    }
}
