package corewright.report.record;

import corewright.damage.Insight;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.screen.Chart;
import corewright.drawing.screen.Chart.At;
import corewright.drawing.screen.Chart.Axis;
import corewright.drawing.screen.Chart.Sign;
import corewright.drawing.screen.ChartPainter;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import java.util.List;

/** How alike near readings are, and how well each is foretold from the rest: a chart and plain words for each. */
final class RecordChecks {
    /** Fewer readings than this say nothing of how good they are. */
    private static final int FEW = 20;

    /** Twice the standard deviation: what chance alone does in one case of twenty. */
    private static final double CHANCE = 2;

    private static final double LEVEL = 0.95;
    private static final double CHART = 52;
    private static final double WIDTH = (PageFrame.FULL_WIDTH - 6) / 2;

    private final Measure measure;

    RecordChecks(Measure measure) {
        this.measure = measure;
    }

    /** @param face its name, to stand over the charts */
    void of(Flow flow, String face, Insight insight) {
        String question = "How alike neighbours are: " + face;
        Insight.Quantity water = insight.water();
        if (water.foretold().size() < FEW || water.lags().size() < 3) {
            flow.answer(
                    "How alike",
                    Prose.plain(face) + ": fewer than " + FEW
                            + " meter readings that count. How far one speaks for its surroundings is assumed, not measured.");
            return;
        }
        Chart left = variogram(water.lags());
        Chart right = foretold(water.foretold());
        String leftWords = alike(water.lags());
        String rightWords = check(water.foretold());
        double words = Math.max(Flow.SMALL.height(leftWords, WIDTH), Flow.SMALL.height(rightWords, WIDTH));
        flow.block(10 + CHART + words + 3, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, question, top + 2.4);
            double second = PageFrame.LEFT + WIDTH + 6;
            paper.figure(leftWords, p -> ChartPainter.onPaper(p, left, new Box(PageFrame.LEFT, top + 8, WIDTH, CHART)));
            paper.figure(rightWords, p -> ChartPainter.onPaper(p, right, new Box(second, top + 8, WIDTH, CHART)));
            Flow.SMALL.paint(paper, leftWords, PageFrame.LEFT, top + 9 + CHART, WIDTH, Anchor.LEFT);
            Flow.SMALL.paint(paper, rightWords, second, top + 9 + CHART, WIDTH, Anchor.LEFT);
        });
    }

    private Chart variogram(List<Insight.Lag> lags) {
        double highest = lags.stream()
                .mapToDouble(l -> Math.max(l.seen(), l.model()))
                .max()
                .orElse(1);
        double furthest = measure.deck(lags.get(lags.size() - 1).lagMm());
        return new Chart(
                Axis.upTo(furthest, "distance between two readings, " + measure.deckUnit()),
                Axis.upTo(highest, "half the mean squared difference of the index"),
                List.of(
                        new Chart.Line(
                                lags.stream()
                                        .map(l -> new At(measure.deck(l.lagMm()), l.model()))
                                        .toList(),
                                false),
                        new Chart.Marks(
                                lags.stream()
                                        .map(l -> new At(measure.deck(l.lagMm()), l.seen()))
                                        .toList(),
                                Sign.RING)));
    }

    private String alike(List<Insight.Lag> lags) {
        double level = lags.stream().mapToDouble(Insight.Lag::model).max().orElse(0);
        Insight.Lag far = lags.get(lags.size() - 1);
        String reach = lags.stream()
                .filter(l -> l.model() >= LEVEL * level && l != far)
                .findFirst()
                .map(l -> "Beyond " + deck(l.lagMm()) + " one reading says next to nothing of another.")
                .orElse("As far as was read, " + deck(far.lagMm()) + ", readings grow less alike.");
        Insight.Lag near = lags.get(0);
        return "Rings: measured. Line: fitted. Two readings " + deck(near.lagMm()) + " apart differ by some "
                + Figures.fixed(Math.sqrt(2 * near.seen()), 0) + " of the index. " + reach;
    }

    private String deck(double mm) {
        return Figures.fixed(measure.deck(mm), measure == Measure.METRIC ? 2 : 1) + " " + measure.deckUnit();
    }

    private static Chart foretold(List<Insight.Foretold> all) {
        return new Chart(
                new Axis("index as foretold from the rest", 200, 4),
                new Axis("index as read; wet from 100", 200, 4),
                List.of(
                        new Chart.Line(List.of(new At(0, 0), new At(200, 200)), true),
                        new Chart.Marks(
                                all.stream()
                                        .map(f -> new At(f.middle(), f.seen()))
                                        .toList(),
                                Sign.DOT)));
    }

    private static String check(List<Insight.Foretold> all) {
        int inside = 0;
        double expected = 0;
        double variance = 0;
        for (Insight.Foretold f : all) {
            inside += f.seen() >= f.low() && f.seen() <= f.high() ? 1 : 0;
            expected += f.within();
            variance += f.within() * (1 - f.within());
        }
        double miss = all.stream()
                .mapToDouble(f -> Math.abs(f.seen() - f.middle()))
                .average()
                .orElse(0);
        double off = (inside - expected) / Math.sqrt(variance);
        String verdict = off < -CHANCE ? "too sure of itself" : off > CHANCE ? "cautious" : "as sure as it says";
        return Prose.bold("Check.") + " " + all.size()
                + " readings were hidden, a tenth at a time, and foretold from the rest: the mean miss is "
                + Figures.fixed(miss, 0) + " of the index. " + inside
                + " lie inside the limits stated without them, " + Figures.fixed(expected, 0)
                + " were to be expected: the map is " + verdict + ".";
    }
}
