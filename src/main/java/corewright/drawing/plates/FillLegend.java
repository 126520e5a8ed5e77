package corewright.drawing.plates;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.marks.FilledHoleMark;
import corewright.drawing.marks.HoleLabel;
import corewright.drawing.marks.HoleMark;
import corewright.drawing.marks.ReadingMark;
import corewright.drawing.marks.StructureMarks;
import corewright.drawing.marks.WarmthMark;
import corewright.drawing.placing.FilledSpaces;
import corewright.drawing.placing.MapLayout;
import corewright.repair.plan.Hole;
import corewright.survey.Sound;
import java.util.ArrayList;
import java.util.List;

/** How to read a fill check: a line for everything it shows of the fill, and for nothing else. */
final class FillLegend {
    private final MapLayout layout;
    private final FilledSpaces filled;
    private final List<LegendLine> entries = new ArrayList<>();

    private FillLegend(MapLayout layout) {
        this.layout = layout;
        this.filled = layout.filled();
    }

    static List<LegendLine> of(MapLayout layout) {
        FillLegend legend = new FillLegend(layout);
        legend.places();
        legend.taps();
        legend.warmth();
        legend.holes();
        legend.part();
        return legend.entries;
    }

    private void mark(LegendSample sample, String... words) {
        entries.add(new LegendLine(false, sample, List.of(words)));
    }

    private void places() {
        if (!filled.shots().isEmpty()) {
            entries.add(new LegendLine(
                    true,
                    (paper, x, y) -> LegendLine.swatch(paper, MapPainter.STILL_HOLLOW, new Box(x - 5.5, y - 3, 11, 6)),
                    List.of("still hollow after cure; grams", "from skin loose to nothing arrived")));
        }
        if (!filled.spaces().isEmpty()) {
            mark((paper, x, y) -> paper.line(MapPainter.FILLED, x - 5.5, y, x + 5.5, y), "filled, as planned");
        }
    }

    private void part() {
        if (layout.spec().part() != null
                && layout.spec().part() != layout.spec().whole()) {
            mark(
                    (paper, x, y) -> paper.line(StructureMarks.MAP_ENDS, x - 5.5, y, x + 5.5, y),
                    "the map ends here, not the deck");
        }
    }

    private void taps() {
        if (filled.spaces().stream().allMatch(s -> s.taps().isEmpty())) {
            return;
        }
        if (heard(Sound.SOUND)) {
            mark((paper, x, y) -> tap(x, y, 0).paint(paper), "tapped after cure: sound");
        }
        if (heard(Sound.DULL) || heard(Sound.HOLLOW)) {
            mark(
                    (paper, x, y) -> {
                        tap(x - 2.5, y, 1).paint(paper);
                        tap(x + 2.5, y, 2).paint(paper);
                    },
                    "line under it: one dull, two hollow");
        }
        if (layout.readings().size() < layout.readingsTotal()) {
            mark(
                    (paper, x, y) -> {},
                    layout.readings().size() + " of " + layout.readingsTotal() + " taps shown,",
                    "where there was room");
        }
    }

    private boolean heard(Sound call) {
        return filled.spaces().stream().anyMatch(s -> s.heard(call) > 0);
    }

    private static ReadingMark tap(double x, double y, int lines) {
        return new ReadingMark(x, y, "", false, lines, ReadingMark.Trust.TAKEN);
    }

    private void warmth() {
        warmth(WarmthMark.Says.THERE, "warm during cure: mix is there");
        warmth(WarmthMark.Says.NOT_THERE, "cold during cure: mix is not there");
        warmth(WarmthMark.Says.NOTHING, "warmth does not tell: low gap or time");
        if (!layout.fronts().isEmpty()) {
            mark(
                    (paper, x, y) -> {
                        paper.line(Pen.LEADER, x - 5.5, y, x + 5.5, y);
                        paper.haloText("3", x, y + Type.READING.capMm() / 2, Type.READING, Paper.Anchor.CENTRE, 0.5);
                    },
                    "simulated front, minutes");
        }
    }

    private void warmth(WarmthMark.Says says, String words) {
        if (filled.warmth().stream().anyMatch(p -> WarmthMark.Says.of(p.verdict()) == says)) {
            mark((paper, x, y) -> new WarmthMark(x, y, says).paint(paper), words);
        }
    }

    private void holes() {
        List<Hole> again = filled.openedAgain();
        hole(
                again.stream().filter(h -> h.kind() == Hole.Kind.INJECTION).toList(),
                "drill open again for a second shot");
        hole(again.stream().filter(h -> h.kind() == Hole.Kind.VENT).toList(), "a vent, to be drilled open again");
        hole(filled.newHoles(), "new hole for a second shot");
        if (filled.holes().size() > filled.openedAgain().size()) {
            mark(
                    (paper, x, y) -> {
                        new FilledHoleMark(x - 2, y, false).paint(paper);
                        new FilledHoleMark(x + 2, y, true).paint(paper);
                    },
                    "injection hole, vent of the fill");
        }
    }

    private void hole(List<Hole> holes, String words) {
        if (!holes.isEmpty()) {
            Hole first = holes.get(0);
            mark(
                    (paper, x, y) -> {
                        new HoleMark(x - 2, y, first.kind() == Hole.Kind.VENT).paint(paper);
                        new HoleLabel(x - 0.1, y, Figures.holeNumber(first.id()), false).paint(paper);
                    },
                    words);
        }
    }
}
