package corewright.desktop.insight;

import corewright.assessment.Ages;
import corewright.damage.Insight;
import corewright.damage.Quantiles;
import corewright.desktop.slip.RangeBar;
import corewright.desktop.slip.Slip;
import corewright.desktop.state.Units;
import corewright.drawing.kit.Figures;
import corewright.drawing.screen.Chart;
import corewright.drawing.screen.Chart.At;
import corewright.drawing.screen.Chart.Axis;
import corewright.drawing.screen.Chart.Sign;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What the map of a face rests on, in four pictures with a sentence each. */
public final class InsightPanels {
    /** Fewer readings than this say nothing of how good they are. */
    private static final int FEW = 20;

    /** A class of probabilities with fewer readings is not shown: one of them would move it by a fifth. */
    private static final int FEW_OF_A_CLASS = 5;

    private static final int CLASSES = 10;

    /** Pairs from which a class of distances is worth a word; common practice. */
    private static final int ENOUGH_PAIRS = 30;

    /** Twice the standard deviation: what chance alone does in one case of twenty. */
    private static final double CHANCE = 2;

    private final Insight insight;
    private final Quantiles voidMm3;
    private final Units units;
    private final boolean oldVolumes;

    private InsightPanels(Insight insight, Quantiles voidMm3, Units units, boolean oldVolumes) {
        this.insight = insight;
        this.voidMm3 = voidMm3;
        this.units = units;
        this.oldVolumes = oldVolumes;
    }

    /**
     * One picture.
     *
     * @param chart null where there is nothing to show; the sentence says why
     */
    public record Panel(
            String title, String sentence, @Nullable Chart chart) {}

    /**
     * @param voidMm3 as the map states it for the face
     * @param oldVolumes volumes are those of before the last change
     */
    public static List<Panel> of(Insight insight, Quantiles voidMm3, Units units, boolean oldVolumes) {
        InsightPanels u = new InsightPanels(insight, voidMm3, units, oldVolumes);
        return List.of(u.variogram(), u.foretold(), u.reliability(), u.volume());
    }

    private Panel variogram() {
        String title = "How far readings speak for each other";
        List<Insight.Lag> lags = insight.water().lags();
        if (insight.water().foretold().size() < FEW || lags.size() < 3) {
            return new Panel(title, "Fewer than " + FEW + " meter readings: range and height are assumed.", null);
        }
        ToDoubleFunction<Insight.Lag> across = l -> units.deck(l.lagMm());
        double highest = lags.stream()
                .mapToDouble(l -> Math.max(l.seen(), l.model()))
                .max()
                .orElse(1);
        List<At> many = new ArrayList<>();
        List<At> few = new ArrayList<>();
        lags.forEach(l -> (l.pairs() < ENOUGH_PAIRS ? few : many).add(new At(across.applyAsDouble(l), l.seen())));
        List<At> model = lags.stream()
                .map(l -> new At(across.applyAsDouble(l), l.model()))
                .toList();
        double furthest = across.applyAsDouble(lags.get(lags.size() - 1));
        Chart chart = new Chart(
                Axis.upTo(furthest, "distance, " + units.deckUnit()),
                Axis.upTo(
                        highest,
                        "half the mean squared difference of the index; discs: as read, rings: few pairs, line: as fitted"),
                List.of(
                        new Chart.Line(model, false),
                        new Chart.Marks(many, Sign.DISC),
                        new Chart.Marks(few, Sign.RING)));
        return new Panel(title, variogramWords(lags), chart);
    }

    private String variogramWords(List<Insight.Lag> lags) {
        Insight.Lag near =
                lags.stream().filter(l -> l.pairs() >= ENOUGH_PAIRS).findFirst().orElse(lags.get(0));
        double level = lags.stream().mapToDouble(Insight.Lag::model).max().orElse(0);
        String reach = lags.stream()
                .filter(l -> l.model() >= 0.95 * level)
                .findFirst()
                .filter(l -> l != lags.get(lags.size() - 1))
                .map(l -> "; beyond " + deck(l.lagMm()) + " one reading tells next to nothing of another")
                .orElse("; over all distances seen they grow more unlike");
        double read = lags.stream().mapToDouble(l -> l.pairs() * l.seen()).sum();
        double fitted = lags.stream().mapToDouble(l -> l.pairs() * l.model()).sum();
        double ratio = fitted / read;
        String fit = ratio > 4.0 / 3
                ? " The fit takes the deck to be rougher than it reads, so the map is cautious between readings."
                : ratio < 0.75
                        ? " The fit takes the deck to be smoother than it reads: damage may be missed between readings."
                        : " The fitted line keeps to what was read.";
        return "Two readings " + deck(near.lagMm()) + " apart differ by some "
                + Figures.fixed(Math.sqrt(2 * near.seen()), 0) + " of the index" + reach + "." + fit;
    }

    private String deck(double mm) {
        return Figures.fixed(units.deck(mm), units == Units.METRIC ? 2 : 1) + " " + units.deckUnit();
    }

    private Panel foretold() {
        String title = "Readings foretold from the others";
        List<Insight.Foretold> all = insight.water().foretold();
        if (all.size() < FEW) {
            return new Panel(title, "Fewer than " + FEW + " meter readings: too few to foretell any.", null);
        }
        double inside = 0;
        double expected = 0;
        double variance = 0;
        for (Insight.Foretold f : all) {
            inside += f.seen() >= f.low() && f.seen() <= f.high() ? 1 : 0;
            expected += f.within();
            variance += f.within() * (1 - f.within());
        }
        double off = (inside - expected) / Math.sqrt(variance);
        String verdict = off < -CHANCE
                ? "the standard errors on the map are too small"
                : off > CHANCE ? "the standard errors on the map are wider than need be" : "the standard errors hold";
        String sentence = Figures.fixed(inside, 0) + " of " + all.size()
                + " readings lie inside the range stated without them; " + Figures.fixed(expected, 0)
                + " were to be expected: " + verdict + ".";
        List<At> dots = all.stream().map(f -> new At(f.middle(), f.seen())).toList();
        At dry = new At(Insight.LEAST_INDEX, Insight.LEAST_INDEX);
        long dryAndSo = dots.stream().filter(dry::equals).count();
        Chart chart = new Chart(
                new Axis("moisture index as foretold", 200, 4),
                new Axis(
                        "as read; wet from 100; " + dryAndSo + " readings lie on one another at 20, dry as foretold",
                        200,
                        4),
                List.of(
                        new Chart.Line(List.of(new At(0, 0), new At(200, 200)), true),
                        new Chart.Marks(dots, Sign.DOT)));
        return new Panel(title, sentence, chart);
    }

    private Panel reliability() {
        String title = "Probabilities and what came true";
        List<Chart.Element> elements = new ArrayList<>();
        elements.add(new Chart.Line(List.of(new At(0, 0), new At(10, 10)), true));
        List<String> words = new ArrayList<>();
        double off = Math.max(
                add(insight.water(), "wet", Sign.DISC, elements, words),
                add(insight.bond(), "dull or hollow", Sign.RING, elements, words));
        if (words.isEmpty()) {
            return new Panel(title, "Too few readings to tell.", null);
        }
        Chart chart = new Chart(
                new Axis("cases in 10, as foretold", 10, 5),
                new Axis("cases in 10 that came true; discs: wet, rings: dull or hollow", 10, 5),
                elements);
        String verdict = off < 1
                ? "; they can be taken at their word."
                : "; take them as an order of more and less likely, not as figures.";
        return new Panel(
                title,
                "What was foretold and what came true differ on the mean by " + String.join(", ", words) + verdict,
                chart);
    }

    /** Adds the marks of one quantity and how far off they are, in ten, which is returned; 0 for too few readings. */
    private static double add(
            Insight.Quantity quantity, String event, Sign sign, List<Chart.Element> elements, List<String> words) {
        if (quantity.foretold().size() < FEW) {
            return 0;
        }
        double[] n = new double[CLASSES];
        double[] stated = new double[CLASSES];
        double[] came = new double[CLASSES];
        for (Insight.Foretold f : quantity.foretold()) {
            int k = Math.min(CLASSES - 1, (int) (f.probability() * CLASSES));
            n[k]++;
            stated[k] += f.probability();
            came[k] += f.came() ? 1 : 0;
        }
        double off = 10
                * IntStream.range(0, CLASSES)
                        .mapToDouble(k -> Math.abs(stated[k] - came[k]))
                        .sum()
                / quantity.foretold().size();
        elements.add(new Chart.Marks(
                IntStream.range(0, CLASSES)
                        .filter(k -> n[k] >= FEW_OF_A_CLASS)
                        .mapToObj(k -> new At(10 * stated[k] / n[k], 10 * came[k] / n[k]))
                        .toList(),
                sign));
        words.add(Figures.fixed(off, 1) + " in 10 for " + event);
        return off;
    }

    private Panel volume() {
        String title = "How much empty space" + (oldVolumes ? ", " + Ages.WORDS : "");
        List<Double> draws = insight.voidMm3().stream()
                .map(units::volume)
                .sorted(Comparator.naturalOrder())
                .toList();
        int count = draws.size();
        Slip.Range range = new Slip.Range(
                units.volume(voidMm3.p10()),
                units.volume(voidMm3.p50()),
                units.volume(voidMm3.p90()),
                units.volumeUnit(),
                false);
        if (count == 0 || range.high() < 0.005) {
            return new Panel(title, "No empty space worth naming is likely under this face.", null);
        }
        double width = width(draws.get(count - 1));
        int bins = (int) Math.floor(draws.get(count - 1) / width) + 1;
        List<Double> heights = IntStream.range(0, bins)
                .mapToObj(b -> (double) draws.stream()
                        .filter(v -> (int) Math.floor(v / width) == b)
                        .count())
                .toList();
        double most = heights.stream().mapToDouble(h -> h).max().orElse(1);
        Axis up = Axis.upTo(1.25 * most, "draws of " + count + "; bar: 8 in 10, tick: the middle");
        Chart chart = new Chart(
                Axis.upTo(bins * width, units.volumeUnit()),
                up,
                List.of(
                        new Chart.Bars(width, heights),
                        new Chart.Span(range.low(), range.middle(), range.high(), 0.93 * up.end())));
        return new Panel(title, RangeBar.words(range), chart);
    }

    /** Some ten to twenty-five columns of a round width. */
    private static double width(double largest) {
        double target = largest / 25;
        double power = Math.pow(10, Math.floor(Math.log10(target)));
        return target <= 2 * power ? 2 * power : target <= 5 * power ? 5 * power : 10 * power;
    }
}
