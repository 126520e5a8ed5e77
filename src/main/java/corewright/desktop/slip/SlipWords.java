package corewright.desktop.slip;

import corewright.assessment.Ages;
import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.desktop.state.Steps;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.PlaceNames;
import corewright.drawing.kit.ShownAreas;
import corewright.survey.Feature;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** What the slip says of a region or of a whole face. */
public final class SlipWords {
    /** A reading this near an edge still bears on the region: half a common grid of 75 to 150 mm. */
    static final double NEAR_MM = 50;

    private final Assessment found;
    private final Units units;
    private final Ages ages;

    private SlipWords(Assessment found, Units units, Ages ages) {
        this.found = found;
        this.units = units;
        this.ages = ages;
    }

    /** @param ages which figures belong to an earlier state of the survey */
    public static SlipWords of(Assessment found, Units units, Ages ages) {
        return new SlipWords(found, units, ages);
    }

    /** Nothing is selected: the face as a whole. */
    public Slip face(String name) {
        FaceDamage damage = found.damage().face(name);
        double deck = damage.deckMm2();
        ShownAreas shown = ShownAreas.of(damage, units.measure());
        List<Slip.Fact> facts = new ArrayList<>(areas(damage, shown));
        Readings own = found.survey().readings().on(name);
        facts.add(new Slip.Fact("rests on", restsOn(own)));
        List<Slip.FindingLine> lines = FindingLines.of(found, name, units);
        Slip.Range range = own.coreSeen() && damage.voidMm3().p90() > 0 ? volume(damage.voidMm3()) : null;
        return new Slip(
                Character.toUpperCase(name.charAt(0)) + name.substring(1),
                deck > 0 ? units.area(damage.told() ? shown.allMm2() : deck) : "",
                summary(damage, deck),
                range == null ? "How much" : missing(),
                range,
                facts,
                new Slip.Work(List.of(), "", open(lines.size(), "open"), lines),
                age(range != null));
    }

    private List<Slip.Fact> areas(FaceDamage damage, ShownAreas shown) {
        List<Slip.Fact> facts = new ArrayList<>();
        for (Condition c : List.of(Condition.WET, Condition.DELAMINATED, Condition.WET_DELAMINATED, Condition.VOID)) {
            double area = shown.mm2(c);
            if (area > 0) {
                facts.add(new Slip.Fact(c.word(), units.area(area), ages.oldMap()));
            }
        }
        if (damage.told()) {
            facts.add(new Slip.Fact("sound", units.area(shown.mm2(Condition.SOUND)), ages.oldMap()));
        }
        return facts;
    }

    /** Which figures of a slip are older than the survey, and when new ones come. */
    private String age(boolean litres) {
        String volumes = units == Units.METRIC ? "Litres" : "Quarts";
        String what = ages.oldMap()
                ? "Every figure here is"
                : !ages.oldRest() ? "" : litres && ages.oldVolumes() ? volumes + " and findings are" : "Findings are";
        return what.isEmpty() ? "" : what + " " + Ages.WORDS + "; new ones follow when the calculation is through.";
    }

    private String summary(FaceDamage damage, double deck) {
        int n = damage.regions().size();
        if (deck == 0) {
            return "Nothing is calculated of this face yet.";
        }
        if (!damage.told()) {
            return found.verdict().sentence();
        }
        String unread = Coverage.of(found.survey(), damage.face()).unread();
        if (n == 0) {
            return unread.isEmpty() ? "No damage is more probable than not." : unread;
        }
        if (!unread.isEmpty()) {
            return unread + " Damage was found in " + Steps.counted(n, "region") + ". Touch one to see what it is.";
        }
        double share = 1 - damage.areaMm2(Condition.SOUND) / deck;
        return Figures.fixed(100 * share, 0) + " of 100 parts of the core are damaged, in " + Steps.counted(n, "region")
                + ". Touch one to see what it is and what can be done.";
    }

    /** One region. */
    public Slip region(Region region) {
        PlaceNames names = PlaceNames.of(found.survey().face(region.face()));
        boolean empty = region.voidMm3().p90() > 0
                && region.condition().loose()
                && found.survey().readings().on(region.face()).coreSeen();
        List<Slip.FindingLine> lines = FindingLines.of(found, region);
        MethodWords methods = new MethodWords(found, !ages.freshRest());
        return new Slip(
                region.id() + "  " + region.condition().word(),
                names.over(region.likely()),
                sentence(region),
                empty ? missing() : "How much",
                empty ? volume(region.voidMm3()) : null,
                facts(region, empty),
                new Slip.Work(methods.keys(region), methods.advice(region), open(lines.size(), "here"), lines),
                age(empty));
    }

    private String missing() {
        return "How much is missing" + (ages.oldVolumes() ? ", " + Ages.WORDS : "");
    }

    private String open(int n, String where) {
        String count = n == 0 ? "Findings, none " + where : "Findings, " + n + " " + where;
        return ages.oldRest() ? count + ", old" : count;
    }

    private Slip.Range volume(Quantiles mm3) {
        return new Slip.Range(
                units.volume(mm3.p10()),
                units.volume(mm3.p50()),
                units.volume(mm3.p90()),
                units.volumeUnit(),
                ages.oldVolumes());
    }

    /** What it is, before what it is called. */
    private String sentence(Region region) {
        String near = beside(region);
        String what =
                switch (region.condition()) {
                    case VOID -> "The skin stands over an empty space" + near + ".";
                    case DELAMINATED -> "The skin is off the core" + near + ".";
                    case WET_DELAMINATED -> "The core is wet and the skin has come loose" + near + ".";
                    case WET -> "The core reads wet" + near + "; the skin is still bonded.";
                    case SOUND -> "Sound.";
                };
        String core =
                switch (region.condition()) {
                    case VOID, DELAMINATED ->
                        region.wet() ? " What core is left reads wet." : " What core is left reads dry.";
                    default -> "";
                };
        return what + core;
    }

    private String beside(Region region) {
        Geometry area = region.likely();
        return found.survey().face(region.face()).features().stream()
                .filter(f -> (f instanceof Feature.Opening || f instanceof Feature.Fitting)
                        && !f.name().isEmpty()
                        && f.geometry().distance(area) < 2 * NEAR_MM)
                .min(java.util.Comparator.comparingDouble(f -> f.geometry().distance(region.label())))
                .map(f -> (f instanceof Feature.Fitting ? " at the " : " beside the ") + f.name())
                .orElse("");
    }

    private List<Slip.Fact> facts(Region region, boolean empty) {
        List<Slip.Fact> facts = new ArrayList<>();
        facts.add(new Slip.Fact("area, likely", units.area(region.likely().getArea()), ages.oldMap()));
        facts.add(new Slip.Fact("area, possible", units.area(region.possible().getArea()), ages.oldMap()));
        Readings near = near(region);
        if (empty) {
            facts.add(new Slip.Fact(
                    "depth, mean and most",
                    units.depthFigure(region.meanVoidDepthMm()) + " and " + units.depth(region.maxVoidDepthMm()),
                    ages.oldMap()));
        } else {
            OptionalDouble most =
                    near.moisture().stream().mapToDouble(Moisture::value).max();
            if (most.isPresent()) {
                facts.add(new Slip.Fact("highest reading", Figures.atMost(most.getAsDouble(), 1) + scale(near)));
            }
        }
        facts.add(new Slip.Fact("rests on", restsOn(near)));
        return facts;
    }

    private String scale(Readings near) {
        Moisture first = near.moisture().get(0);
        double full = found.survey().meter(first.meter()).fullScale();
        return " on the scale of " + Figures.atMost(full, 0);
    }

    private Readings near(Region region) {
        PointOnGeometryLocator area =
                new IndexedPointInAreaLocator(region.likely().buffer(NEAR_MM));
        Readings on = found.survey().readings().on(region.face());
        return new Readings(
                on.moisture().stream().filter(m -> in(area, m.spot())).toList(),
                on.taps().stream().filter(t -> in(area, t.spot())).toList(),
                on.probes().stream().filter(p -> in(area, p.spot())).toList(),
                on.feelers().stream().filter(f -> in(area, f.spot())).toList(),
                on.plugs().stream().filter(p -> in(area, p.spot())).toList(),
                List.of());
    }

    private static boolean in(PointOnGeometryLocator area, Spot spot) {
        return area.locate(new Coordinate(spot.xMm(), spot.yMm())) != Location.EXTERIOR;
    }

    private static String restsOn(Readings r) {
        List<String> kinds = new ArrayList<>();
        add(kinds, r.moisture().size(), "reading");
        add(kinds, r.taps().size(), "tap");
        add(kinds, r.probes().size(), "probe");
        add(kinds, r.feelers().size(), "feeler");
        add(kinds, r.plugs().size(), "plug");
        return kinds.isEmpty() ? "no reading of its own" : String.join(", ", kinds);
    }

    private static void add(List<String> kinds, int n, String noun) {
        if (n > 0) {
            kinds.add(Steps.counted(n, noun));
        }
    }
}
