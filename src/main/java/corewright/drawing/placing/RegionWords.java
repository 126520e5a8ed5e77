package corewright.drawing.placing;

import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Shapes;
import corewright.drawing.kit.Type;
import corewright.repair.plan.Hole;
import corewright.repair.plan.InjectionPlan;
import corewright.repair.plan.RecorePlan;
import corewright.survey.Feature;
import corewright.survey.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** What a region's label says, the first line being its head. */
public final class RegionWords {
    /** A fitting this near gives a region its address; two keep-outs of 60 mm. */
    private static final double AT_MM = 120;

    /** Longest further line, paper millimetres: a label wider than this finds no corner. */
    private static final double WIDEST = 56;

    private static final int MOST_LINES = 4;

    /** In place of a first step that takes more lines; the table has it in full. */
    private static final String PROOF_FIRST = "proof first: see report";

    private final MapSpec spec;
    private final FaceDamage damage;

    public RegionWords(MapSpec spec) {
        this.spec = spec;
        this.damage = spec.damage();
    }

    /** Everything there is to say. */
    public List<String> full(Region region) {
        if (spec.shows(Layer.METHODS)) {
            return method(region);
        }
        return spec.wording() == MapWording.OWNER ? owner(region) : trade(region);
    }

    /** What must be said where paper is short: the head, and the area or what comes before any work. */
    List<String> brief(Region region) {
        String area = spec.measure().area(region.likely().getArea());
        String head = full(region).get(0);
        if (!spec.shows(Layer.METHODS)) {
            return List.of(head, area);
        }
        RegionDecision on = spec.assessment().decision().on(region.id());
        if (on.architect()) {
            return List.of(head, "architect or surveyor first");
        }
        return List.of(head, on.firstStep() == null ? area : PROOF_FIRST);
    }

    private List<String> trade(Region region) {
        Measure in = spec.measure();
        String area = in.area(region.likely().getArea());
        if (region.condition() == Condition.VOID) {
            double possible = region.possible().getArea();
            String more = possible > 1.05 * region.likely().getArea() ? ", possibly " + in.areaFigure(possible) : "";
            String depth = "depth " + in.depthFigure(region.meanVoidDepthMm()) + " " + in.depthUnit() + " on average, "
                    + in.depthFigure(region.maxVoidDepthMm()) + " at most";
            return List.of(head(region), area + more + " · " + volume(region.voidMm3()), depth);
        }
        String address = address(region);
        List<String> lines = new ArrayList<>(List.of(head(region)));
        lines.addAll(Type.NOTE.wrapEvenly(address.isEmpty() ? area : area + ", " + address, WIDEST));
        return lines;
    }

    /** "0.88 L (0.65 to 1.15)". */
    private String volume(Quantiles mm3) {
        Measure in = spec.measure();
        String middle = in.volumeFigure(mm3.p50()) + " " + in.volumeSign();
        return spec.lettering().oldVolumes()
                ? middle + ", old"
                : middle + " (" + in.volumeFigure(mm3.p10()) + " to " + in.volumeFigure(mm3.p90()) + ")";
    }

    private String head(Region region) {
        String doubt = doubted(region) ? "?" : "";
        return switch (region.condition()) {
            case VOID -> "void" + doubt;
            case DELAMINATED -> "delaminated" + doubt + ", dry";
            case WET_DELAMINATED -> "wet-delaminated" + doubt;
            case WET -> doubt.isEmpty() ? "wet, skin still bonded" : "wet? readings doubted";
            case SOUND -> "sound";
        };
    }

    private List<String> owner(Region region) {
        String area = spec.measure().area(region.likely().getArea());
        return switch (region.condition()) {
            case VOID ->
                List.of(
                        "empty space under the skin",
                        area + ", "
                                + spec.measure().volumeFigure(region.voidMm3().p50()) + " "
                                + spec.measure().volumeUnit());
            case DELAMINATED -> List.of("skin loose, dry", area);
            case WET_DELAMINATED -> List.of("wet, and the skin is loose", area);
            case WET -> List.of(doubted(region) ? "wet? doubtful" : "wet, still bonded", area);
            case SOUND -> List.of("sound", area);
        };
    }

    /** Half or more of the meter readings inside are doubted. */
    private boolean doubted(Region region) {
        Geometry near = region.likely();
        long doubts = damage.findings().stream()
                .flatMap(f -> f.doubted().stream())
                .distinct()
                .filter(r -> r.kind() == Reading.Kind.MOISTURE
                        && inside(near, r.spot().xMm(), r.spot().yMm()))
                .count();
        if (doubts == 0) {
            return false;
        }
        long all = spec.assessment().survey().readings().moisture().stream()
                .filter(m -> m.spot().face().equals(spec.face())
                        && inside(near, m.spot().xMm(), m.spot().yMm()))
                .count();
        return 2 * doubts >= all;
    }

    private static boolean inside(Geometry area, double x, double y) {
        // most of many thousand readings lie far from a region
        return area.getEnvelopeInternal().covers(x, y) && area.intersects(Shapes.point(x, y));
    }

    /** Around another region, or at the load-bearing fitting in it or next to it, or nothing. */
    private String address(Region region) {
        Polygon solid =
                Shapes.FACTORY.createPolygon(region.likely().getExteriorRing().getCoordinates());
        List<String> inner = damage.regions().stream()
                .filter(r -> r != region && solid.contains(r.label()))
                .map(Region::id)
                .toList();
        if (!inner.isEmpty()) {
            return "around " + String.join(", ", inner);
        }
        return fitting(region).map(f -> "at the " + f.name()).orElse("");
    }

    private Optional<Feature.Fitting> fitting(Region region) {
        return damage.face().all(Feature.Fitting.class).stream()
                .filter(f -> f.loadBearing() && !f.name().isEmpty())
                .filter(f -> f.geometry().distance(region.likely()) <= AT_MM)
                .min(Comparator.comparingDouble(f -> f.geometry().distance(region.label())));
    }

    /** Whether a region's label already says the fitting's name. */
    boolean says(Feature.Fitting fitting) {
        return spec.shows(Layer.REGION_LABELS)
                && damage.regions().stream()
                        .anyMatch(r -> String.join(" ", full(r)).endsWith("at the " + fitting.name())
                                && fitting(r).filter(f -> f == fitting).isPresent());
    }

    private List<String> method(Region region) {
        Decision decision = spec.assessment().decision();
        RegionDecision on = decision.on(region.id());
        List<String> lines = new ArrayList<>();
        lines.add(doing(on.method()));
        lines.add(spec.measure().say(figures(region, on.method(), decision)));
        if (on.architect()) {
            lines.add("a naval architect or surveyor decides first");
        }
        if (on.firstStep() != null) {
            List<String> step = Type.NOTE.wrapEvenly("first: " + spec.measure().say(lowered(on.firstStep())), WIDEST);
            lines.addAll(lines.size() + step.size() > MOST_LINES ? List.of(PROOF_FIRST) : step);
        }
        return lines;
    }

    private static String lowered(String sentence) {
        String text = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return text.isEmpty() ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
    }

    /** The deed, in the words of the yard. */
    public static String doing(Method method) {
        return switch (method) {
            case MONITOR -> "leave and watch";
            case DRY_OUT -> "dry out";
            case INJECT -> "inject";
            case RECORE -> "cut out, new core";
        };
    }

    private static String figures(Region region, Method method, Decision decision) {
        String what =
                region.condition().word() + ", " + Figures.area(region.likely().getArea());
        if (method == Method.INJECT) {
            Optional<InjectionPlan> plan = decision.injections().stream()
                    .filter(p -> p.part(region.id()).isPresent())
                    .findFirst();
            return plan.map(p -> p.fillsBeside(region.id()) ? "filled with " + p.region() : holes(p))
                    .orElse(what);
        }
        if (method == Method.RECORE) {
            Optional<RecorePlan> plan = decision.recores().stream()
                    .filter(p -> p.region().equals(region.id()))
                    .findFirst();
            return plan.map(p -> "cut " + Figures.area(p.cut().getArea()) + ", core " + Figures.atMost(p.coreMm(), 1)
                            + " mm")
                    .orElse(what);
        }
        return what;
    }

    private static String holes(InjectionPlan plan) {
        int holes = plan.count(Hole.Kind.INJECTION);
        int vents = plan.count(Hole.Kind.VENT);
        int nozzle = plan.count(Hole.Kind.NOZZLE);
        return counted(holes, "hole")
                + ", "
                + (nozzle > 0 ? counted(nozzle, "place") + " by nozzle, " : "")
                + counted(vents, "vent")
                + " · "
                + Figures.atMost(plan.mixedG(), 0)
                + " g mixed";
    }

    private static String counted(int n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }
}
