package corewright.desktop.decide;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.decision.Flip;
import corewright.decision.Method;
import corewright.decision.Option;
import corewright.decision.Overruled;
import corewright.decision.RegionDecision;
import corewright.desktop.state.Workbench;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.report.page.Wording;
import corewright.survey.Edit;
import corewright.survey.MethodOverride;
import corewright.survey.Part;
import corewright.survey.Spot;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** What each method asks and gives in the region selected, and the choice of another. Knows no window. */
public final class DecideModel {
    private static final int FLIPS = 2;

    /** What a method asks, as ranges; nothing of what is not offered. The weight is what stays aboard. */
    public record Asks(String cost, String hours, String days, String weight) {
        static final Asks NOTHING = new Asks("", "", "", "");
    }

    /**
     * One of the four methods.
     *
     * @param asks cost, hours, days and weight, each as a column has it
     * @param figures the same in words; empty where it is not offered
     * @param stiffness 1 as built; empty where it was not calculated
     * @param current what is decided now
     */
    public record Row(
            Method method,
            Asks asks,
            String figures,
            Optional<Quantiles> stiffness,
            String why,
            boolean offered,
            boolean current,
            boolean advised) {}

    private final Workbench bench;
    private @Nullable Method wanted;
    private String wantedFor = "";

    public DecideModel(Workbench bench) {
        this.bench = bench;
    }

    /** What is found, as far as its advice belongs to the survey as it is. */
    private Optional<Assessment> found() {
        return bench.found().filter(a -> a.ages().freshRest());
    }

    /** The region selected, where there is advice for it. */
    public Optional<Region> region() {
        return bench.region().filter(r -> decision(r).isPresent());
    }

    private Optional<RegionDecision> decision(Region region) {
        return found().flatMap(a -> a.decision().regions().stream()
                .filter(d -> d.region().equals(region.id()))
                .findFirst());
    }

    public List<Row> rows(Region region) {
        List<Row> rows = new ArrayList<>();
        decision(region).ifPresent(d -> {
            for (Option o : found().orElseThrow().decision().weighing().options()) {
                if (o.region().equals(region.id())) {
                    Method method = Methods.of(o.method());
                    rows.add(new Row(
                            method,
                            o.work().map(w -> asks(o, w)).orElse(Asks.NOTHING),
                            figures(o),
                            o.stiffness(),
                            say(o.why()),
                            o.offered(),
                            d.method() == method,
                            advised(region) == method));
                }
            }
        });
        return rows;
    }

    private Asks asks(Option o, Option.Work w) {
        Measure measure = bench.sight().units().measure();
        double net = measure.weight(o.weight().netKg());
        return new Asks(
                Wording.money("", w.costLow(), w.costHigh()).strip(),
                range(w.hoursLow(), w.hoursHigh(), 0),
                Double.isInfinite(w.daysHigh())
                        ? Wording.days(w.daysLow(), w.daysLow()) + " or more"
                        : Wording.days(w.daysLow(), w.daysHigh()),
                Double.isNaN(net) ? "?" : Figures.fixed(net, 1));
    }

    /** In which costs are told. */
    String currency() {
        return bench.survey().map(s -> s.settings().costs().currency()).orElse("");
    }

    /** Of which panel the stiffness of a region's methods is told; empty where none was calculated. */
    String panel(Region region) {
        return found().flatMap(a -> a.decision().weighing().options().stream()
                        .filter(o ->
                                o.region().equals(region.id()) && !o.panel().isEmpty())
                        .map(Option::panel)
                        .findFirst())
                .orElse("");
    }

    private String figures(Option o) {
        String currency = currency();
        return o.work()
                .map(w -> Wording.money(currency, w.costLow(), w.costHigh()) + ", "
                        + range(w.hoursLow(), w.hoursHigh(), 0) + " h, " + days(w) + weight(o))
                .orElse("");
    }

    private static String days(Option.Work w) {
        return Double.isInfinite(w.daysHigh())
                ? Wording.days(w.daysLow(), w.daysLow()) + " days or more, perhaps never dry"
                : Wording.days(w.daysLow(), w.daysHigh()) + (Math.ceil(w.daysHigh() - 1e-9) == 1 ? " day" : " days");
    }

    private String weight(Option o) {
        Measure measure = bench.sight().units().measure();
        double net = measure.weight(o.weight().netKg());
        return Double.isNaN(net) || Math.abs(net) < 0.05
                ? ""
                : ", " + (net > 0 ? "+" : "") + Figures.fixed(net, 1) + " " + measure.weightUnit();
    }

    static String range(double low, double high, int decimals) {
        String a = Figures.fixed(low, decimals);
        String b = Figures.fixed(high, decimals);
        return a.equals(b) ? a : a + " to " + b;
    }

    /** What must be proven first, empty where nothing must. */
    public String first(Region region) {
        return say(decision(region).map(RegionDecision::firstStep).orElse(""));
    }

    /** Why it is decided so; a decision by hand first. */
    public List<String> reasons(Region region) {
        return decision(region).map(RegionDecision::reasons).orElse(List.of()).stream()
                .map(this::say)
                .toList();
    }

    /** Words with the reader's units. */
    String say(String words) {
        return bench.sight().units().measure().say(words);
    }

    /** What would change it, the likeliest first. */
    public List<Flip> flips(Region region) {
        return found().map(a -> a.decision().weighing().flips().stream()
                        .filter(f -> f.region().equals(region.id()))
                        .sorted(Comparator.comparingDouble(Flip::probability).reversed())
                        .limit(FLIPS)
                        .toList())
                .orElse(List.of());
    }

    /** A person decided otherwise than the rules. */
    public Optional<Overruled> overruled(Region region) {
        return decision(region).flatMap(d -> Optional.ofNullable(d.overruled()));
    }

    /** What the rules advise, whatever a person decided. */
    public Method advised(Region region) {
        return overruled(region)
                .map(Overruled::rules)
                .orElseGet(() -> decision(region).orElseThrow().method());
    }

    /** Whether somebody is named who decides. */
    public boolean named() {
        return bench.survey().filter(s -> !s.heading().surveyor().isBlank()).isPresent();
    }

    // --- choosing ----------------------------------------------------------------------------------------------------

    /** Wants another method for the region selected; it waits for a reason. */
    public void want(Method method) {
        region().ifPresent(r -> {
            wanted = decision(r).filter(d -> d.method() == method).isPresent() ? null : method;
            wantedFor = r.id();
        });
    }

    public void wantNothing() {
        wanted = null;
    }

    /** The method that waits for a reason. */
    public Optional<Method> wanted() {
        boolean here = bench.region().filter(r -> r.id().equals(wantedFor)).isPresent();
        return here ? Optional.ofNullable(wanted) : Optional.empty();
    }

    /** The stop sign that the wanted method would go past; empty where there is none. */
    public String stop() {
        return wanted().flatMap(m -> region().flatMap(r -> rows(r).stream()
                        .filter(row -> row.method() == m && !row.offered())
                        .map(Row::why)
                        .findFirst()))
                .orElse("");
    }

    /**
     * Decides so, and writes down why.
     *
     * @param who may be left empty where the survey names its surveyor
     * @return what is missing, empty where it is decided
     */
    public String decide(String reason, String who) {
        Region region = region().orElse(null);
        Method method = wanted().orElse(null);
        if (region == null || method == null) {
            return "";
        }
        boolean back = method == advised(region);
        if (!back && reason.isBlank()) {
            return "Another method needs one reason in your words; it is printed beside the choice.";
        }
        if (!back && !named() && who.isBlank()) {
            return "Say who decides; the survey names no surveyor.";
        }
        wanted = null;
        bench.edit(
                region.id() + ": " + method.word() + (back ? ", as advised" : ""),
                s -> back ? lifted(s, region) : put(s, region, method, who.strip(), reason.strip()));
        return "";
    }

    /** The decision for a region in place of what was decided there before. */
    static Edit put(Survey survey, Region region, Method method, String who, String reason) {
        Spot spot =
                new Spot(region.face(), region.label().getX(), region.label().getY());
        List<Edit> edits = new ArrayList<>();
        Edit lifted = lifted(survey, region);
        Survey now = survey;
        if (lifted != null) {
            edits.add(lifted);
            now = lifted.apply(survey);
        }
        edits.add(Edit.add(now, Part.METHODS, new MethodOverride(spot, method.word(), who, reason)));
        return new Edit.Together(edits);
    }

    private static @Nullable Edit lifted(Survey survey, Region region) {
        List<Edit> edits = new ArrayList<>();
        Survey now = survey;
        for (MethodOverride o : survey.judgements().methods()) {
            if (o.spot().face().equals(region.face()) && covers(region.likely(), o.spot())) {
                Edit gone = Edit.remove(now, Part.METHODS, o);
                edits.add(gone);
                now = gone.apply(now);
            }
        }
        return edits.isEmpty() ? null : new Edit.Together(edits);
    }

    private static boolean covers(Geometry area, Spot spot) {
        return area.covers(area.getFactory().createPoint(spot.coordinate()));
    }
}
