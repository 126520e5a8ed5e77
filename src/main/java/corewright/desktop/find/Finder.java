package corewright.desktop.find;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Regions, features, holes, panels, readings, findings and places by what a person calls them. */
public final class Finder {
    /** More than a menu shows at a look. */
    private static final int MOST = 10;

    private static final int LONGEST = 60;

    private final Assessment shown;
    private final String face;
    private final String called;
    private final List<Found> all = new ArrayList<>();

    /**
     * Something found.
     *
     * @param name as the plan marks it
     * @param what as the list says it
     * @param region to be selected with it, empty for none
     * @param exact it is called exactly so
     */
    public record Found(String name, String what, Spot spot, String region, boolean exact) {}

    private Finder(Assessment shown, String face, String called) {
        this.shown = shown;
        this.face = face;
        this.called = called.strip().toLowerCase(Locale.ROOT);
    }

    /** What is called so: exact names first, the face shown before others; at most ten. */
    public static List<Found> find(Assessment shown, String face, String called) {
        Finder finder = new Finder(shown, face, called);
        return finder.called.isEmpty() ? List.of() : finder.search();
    }

    private List<Found> search() {
        regions();
        holes();
        panels();
        features();
        places();
        readings();
        findings();
        return all.stream()
                .sorted(Comparator.comparing((Found f) -> !f.exact())
                        .thenComparing(f -> !f.spot().face().equals(face)))
                .limit(MOST)
                .toList();
    }

    private void regions() {
        shown.damage().regions().forEach(r -> {
            if (is(r.id()) || has(r.condition().word())) {
                add(r.id(), r.id() + " " + r.condition().word(), spot(r.face(), r.label()), r.id());
            }
        });
    }

    /** "R1-3", or "hole 3" and "vent 2" in every region that has them. */
    private void holes() {
        for (InjectionPlan plan : shown.plans().injections()) {
            for (Hole h : plan.holes()) {
                String number = Figures.holeNumber(h.id());
                String word = (h.kind() == Hole.Kind.VENT ? "vent " : "hole ") + number;
                if (is(h.id()) || is(word) || is("hole " + number)) {
                    add(number, word + " of " + h.region(), h.spot(), h.region());
                }
            }
        }
    }

    private void panels() {
        shown.stiffness().panels().forEach(p -> {
            String name = p.panel().name();
            if (has(name) && called.length() > 1) {
                add(name, "panel " + name, spot(p.panel().face(), p.panel().area()), "");
            }
        });
    }

    private void features() {
        for (Face f : shown.survey().faces()) {
            for (Feature feature : f.features()) {
                if (has(feature.name()) && called.length() > 1) {
                    add(feature.name(), feature.name() + " on " + f.name(), spot(f.name(), feature.geometry()), "");
                }
            }
        }
    }

    private void places() {
        PlaceNames names = PlaceNames.of(shown.survey().face(face));
        names.find(called).ifPresent(s -> {
            String name = names.at(s.xMm(), s.yMm());
            all.add(new Found(name, "place " + name, s, "", true));
        });
    }

    private void readings() {
        Readings r = shown.survey().readings();
        Stream.of(r.moisture(), r.taps(), r.probes(), r.feelers(), r.plugs())
                .flatMap(List::stream)
                .filter(one -> is(one.id()))
                .forEach((Reading one) -> add(one.id(), "reading " + one.id(), one.spot(), ""));
    }

    private void findings() {
        for (Finding f : shown.findings()) {
            Spot spot = f.about().spot();
            if (spot != null && called.length() > 2 && has(f.message())) {
                all.add(new Found("", shortened(f.message()), spot, "", false));
            }
        }
    }

    private static String shortened(String words) {
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST - 1) + "…";
    }

    private void add(String name, String what, Spot spot, String region) {
        all.add(new Found(name, what, spot, region, is(name)));
    }

    private boolean is(String name) {
        return name.toLowerCase(Locale.ROOT).equals(called);
    }

    private boolean has(String name) {
        return name.toLowerCase(Locale.ROOT).contains(called);
    }

    private static Spot spot(String face, Geometry g) {
        Coordinate at = (g.getDimension() == 2 ? g.getInteriorPoint() : g.getCentroid()).getCoordinate();
        return new Spot(face, at.x, at.y);
    }
}
