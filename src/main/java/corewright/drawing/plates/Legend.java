package corewright.drawing.plates;

import corewright.damage.Condition;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Extents;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Pattern;
import corewright.drawing.kit.Pen;
import corewright.drawing.marks.FeelerMark;
import corewright.drawing.marks.FittingMark;
import corewright.drawing.marks.HoleLabel;
import corewright.drawing.marks.HoleMark;
import corewright.drawing.marks.NozzleMark;
import corewright.drawing.marks.PlugMark;
import corewright.drawing.marks.ProbeMark;
import corewright.drawing.marks.ReadingMark;
import corewright.drawing.marks.TagMark;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.repair.plan.Hole;
import corewright.survey.Feature;
import corewright.survey.Meter;
import corewright.survey.Readings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How to read a map: a line for everything the map uses, and for nothing else. */
public final class Legend {
    private static final double SWATCH_WIDTH = 11;

    private final MapLayout layout;
    private final MapSpec spec;
    private final FaceDamage damage;
    private final List<LegendLine> entries = new ArrayList<>();

    private Legend(MapLayout layout) {
        this.layout = layout;
        this.spec = layout.spec();
        this.damage = spec.damage();
    }

    static List<LegendLine> of(MapLayout layout) {
        Legend legend = new Legend(layout);
        if (layout.spec().shows(Layer.FILL_CHECK)) {
            legend.entries.addAll(FillLegend.of(layout));
        } else {
            legend.conditions();
            legend.extents();
            legend.readings();
            legend.probes();
            legend.work();
        }
        legend.fittings();
        return legend.entries;
    }

    /** What a pattern means, in one line. */
    public static String meaning(Condition condition, MapWording wording) {
        boolean owner = wording == MapWording.OWNER;
        return switch (condition) {
            case SOUND -> "sound";
            case WET -> owner ? "wet" : "wet: water in the core";
            case DELAMINATED -> owner ? "skin loose" : "delaminated: skin loose, dry";
            case WET_DELAMINATED -> owner ? "wet and loose" : "wet-delaminated: wet and loose";
            case VOID -> owner ? "empty space under the skin" : "void: empty space under the skin";
        };
    }

    /** The word for what the readings leave open. */
    public static final String NOT_DECIDED = "not decided yet";

    private void conditions() {
        for (Condition c : List.of(Condition.WET, Condition.DELAMINATED, Condition.WET_DELAMINATED, Condition.VOID)) {
            if (damage.regions().stream().anyMatch(r -> r.condition() == c)) {
                pattern(Pattern.of(c), meaning(c, spec.wording()));
            }
        }
        if (!damage.undecided().isEmpty()) {
            boolean tags = !layout.marks().tags().isEmpty();
            pattern(Pattern.UNDECIDED, NOT_DECIDED + (tags ? ": read here next" : ""));
        }
    }

    private void pattern(Pattern pattern, String words) {
        double tall = 6;
        entries.add(new LegendLine(
                true,
                (paper, x, y) -> LegendLine.swatch(
                        paper, pattern, new Box(x - SWATCH_WIDTH / 2, y - tall / 2, SWATCH_WIDTH, tall)),
                List.of(words)));
    }

    private void line(Pen pen, String words) {
        mark((paper, x, y) -> paper.line(pen, x - SWATCH_WIDTH / 2, y, x + SWATCH_WIDTH / 2, y), words);
    }

    private void mark(LegendSample sample, String... words) {
        entries.add(new LegendLine(false, sample, List.of(words)));
    }

    private void extents() {
        if (damage.regions().isEmpty()) {
            return;
        }
        line(Pen.LIKELY, "likely: more probable than not");
        if (!Extents.possible(damage, layout.view()).isEmpty()) {
            line(Pen.POSSIBLE, "possible: cannot be ruled out");
        }
    }

    private void readings() {
        List<ReadingMark> shown = layout.readings();
        int tapped = shown.stream().anyMatch(r -> r.lines() > 0) ? 1 : 0;
        if (shown.stream().anyMatch(r -> !r.text().isEmpty())) {
            mark(
                    (paper, x, y) -> {
                        reading(x - 2.5, y, "14", 0, ReadingMark.Trust.TAKEN).paint(paper);
                        reading(x + 2.5, y, "37", tapped, ReadingMark.Trust.TAKEN)
                                .paint(paper);
                    },
                    scale().toArray(String[]::new));
        }
        if (shown.stream().anyMatch(r -> r.lines() > 0)) {
            mark(
                    (paper, x, y) -> {
                        reading(x - 2.5, y, "22", 1, ReadingMark.Trust.TAKEN).paint(paper);
                        reading(x + 2.5, y, "31", 2, ReadingMark.Trust.TAKEN).paint(paper);
                    },
                    "line under it: tap, one dull, two hollow");
        }
        if (shown.stream().anyMatch(r -> r.text().isEmpty())) {
            mark(
                    (paper, x, y) ->
                            reading(x, y, "", 1, ReadingMark.Trust.TAKEN).paint(paper),
                    "dot: tapped, no meter reading");
        }
        trust(ReadingMark.Trust.DOUBTED, "(41)", "in brackets: doubted, see findings.csv");
        trust(ReadingMark.Trust.SET_ASIDE, "77", "struck through: set aside, see findings.csv");
        if (shown.size() < layout.readingsTotal()) {
            mark(
                    (paper, x, y) -> {},
                    shown.size() + " of " + layout.readingsTotal() + " readings shown,",
                    "where figures had room; the files have all");
        }
    }

    private void trust(ReadingMark.Trust trust, String sample, String words) {
        if (layout.readings().stream().anyMatch(r -> r.trust() == trust)) {
            String text = sample.replaceAll("[()]", "");
            mark((paper, x, y) -> reading(x, y, text, 0, trust).paint(paper), words);
        }
    }

    private static ReadingMark reading(double x, double y, String text, int lines, ReadingMark.Trust trust) {
        return new ReadingMark(x, y, text, false, lines, trust);
    }

    /** What the numbers mean, from the meters that were used here. */
    private List<String> scale() {
        List<Meter> meters = spec.assessment().survey().readings().on(spec.face()).moisture().stream()
                .map(m -> m.meter())
                .distinct()
                .map(name -> spec.assessment().survey().meter(name))
                .toList();
        List<String> lines = new ArrayList<>();
        for (Meter m : meters) {
            String which = meters.size() > 1 ? " " + m.name() : "";
            String kind = m.kind() == Meter.Kind.PIN ? "wood scale" : "relative scale";
            lines.add((meters.size() > 1 ? "meter" + which : "meter reading") + ", " + kind + " 0 to "
                    + Figures.atMost(m.fullScale(), 0) + ":");
            String dry = m.dry() == null ? "" : Figures.atMost(m.dry(), 1) + " is this deck dry, ";
            double wet = m.wet() != null ? m.wet() : m.dry() != null ? 2 * m.dry() : Double.NaN;
            lines.add(Double.isNaN(wet) ? dry : dry + Figures.atMost(wet, 1) + " counts as wet");
        }
        lines.removeIf(String::isBlank);
        return lines;
    }

    private void probes() {
        if (!spec.shows(Layer.PROBES)) {
            return;
        }
        Readings readings = spec.assessment().survey().readings().on(spec.face());
        if (!readings.probes().isEmpty()) {
            mark(
                    (paper, x, y) -> new ProbeMark(x - 2, y, spec.measure().depthFigure(7.5)).paint(paper),
                    "probe: void depth, " + spec.measure().depthUnit());
        }
        if (!readings.feelers().isEmpty()) {
            mark(
                    (paper, x, y) -> new FeelerMark(x - 3.5, y, x + 4, y, true).paint(paper),
                    "feeler: bar met core, arrow goes on");
        }
        if (!readings.plugs().isEmpty()) {
            mark((paper, x, y) -> new PlugMark(x - 2.5, y, "11 %").paint(paper), "plug: water, % of dry mass");
        }
    }

    private void work() {
        if (!layout.marks().tags().isEmpty()) {
            mark(
                    (paper, x, y) -> new TagMark(x - 3, y, "?1", true).paint(paper),
                    "what the next readings should answer");
        }
        List<Hole> holes = layout.marks().holePlans();
        if (holes.stream().anyMatch(h -> h.kind() == Hole.Kind.INJECTION)) {
            mark(
                    (paper, x, y) -> {
                        new HoleMark(x - 2, y, false).paint(paper);
                        new HoleLabel(x - 0.1, y, "3", false).paint(paper);
                    },
                    "injection hole, in working order");
        }
        if (holes.stream().anyMatch(h -> h.kind() == Hole.Kind.VENT)) {
            mark(
                    (paper, x, y) -> {
                        new HoleMark(x - 2, y, true).paint(paper);
                        new HoleLabel(x - 0.1, y, "V1", false).paint(paper);
                    },
                    "vent hole: mix shows here");
        }
        if (holes.stream().anyMatch(h -> h.kind() == Hole.Kind.NOZZLE)) {
            mark(
                    (paper, x, y) -> {
                        new NozzleMark(x - 3.2, y, x + 1.6, y, 3.2).paint(paper);
                        new HoleLabel(x + 3.8, y, "N1", false).paint(paper);
                    },
                    "nozzle through an opening: no hole");
        }
        long stops = layout.holeLabels().stream().filter(HoleLabel::stop).count();
        long wanted =
                holes.stream().filter(h -> h.kind() == Hole.Kind.INJECTION).count();
        if (stops > 0) {
            List<String> words =
                    new ArrayList<>(List.of("depth stop, " + spec.measure().depthUnit() + ": never drill past it"));
            if (stops < wanted) {
                words.add(stops + " of " + wanted + " shown, all on the work card");
            }
            mark(
                    (paper, x, y) -> new HoleLabel(x - 1.8, y, spec.measure().stopFigure(8.5), true).paint(paper),
                    words.toArray(String[]::new));
        }
        if (spec.shows(Layer.CUTS) && !spec.assessment().decision().recores().isEmpty()) {
            line(Pen.CUT, "cut line through the outer skin");
        }
    }

    private void fittings() {
        Map<String, FittingMark> kinds = new LinkedHashMap<>();
        for (Feature.Fitting f : damage.face().all(Feature.Fitting.class)) {
            boolean framed = f.loadBearing() && spec.shows(Layer.BACKING);
            String words = "fitting" + (f.metal() ? ", metal" : "") + (framed ? ", load-bearing" : "");
            kinds.putIfAbsent(words, new FittingMark(0, 0, f.metal(), framed));
        }
        kinds.forEach((words, m) ->
                mark((paper, x, y) -> new FittingMark(x, y, m.metal(), m.loadBearing()).paint(paper), words));
    }
}
