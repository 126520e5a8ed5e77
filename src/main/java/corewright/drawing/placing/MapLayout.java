package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.VoiceGrid;
import corewright.drawing.marks.DatumMark;
import corewright.drawing.marks.HoleLabel;
import corewright.drawing.marks.HoleMark;
import corewright.drawing.marks.Mark;
import corewright.drawing.marks.NameMark;
import corewright.drawing.marks.ReadingMark;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Where everything of a map goes, worked out before anything is painted.
 *
 * @param readings those there is room for
 * @param readingsTotal all there are
 * @param gridArea between the letters of the voice grid
 * @param sheetMarks comb and ramp; empty where no corner was free
 * @param filled what a fill check shows, nothing on other maps
 * @param fronts of the simulated fill
 * @param cost of the labels, in millimetres of leader
 */
public record MapLayout(
        MapSpec spec,
        PlanView view,
        Marks marks,
        List<ReadingMark> readings,
        int readingsTotal,
        List<NameMark> names,
        List<RegionLabel> labels,
        List<HoleLabel> holeLabels,
        List<Mark> sheetMarks,
        Box gridArea,
        FilledSpaces filled,
        List<Front> fronts,
        double cost) {
    /** 1 : 5 to 1 : 100 are the standard ones; the last two keep a very long face on the sheet. */
    private static final double[] SCALES = {5, 10, 20, 25, 50, 100, 200, 500};

    /** The next smaller scale is worth this much leader: about one label said in full. */
    private static final double STEP_COST = 140;

    private static final int TRIES = 3;
    private static final double DATUM_ROOM = 12;
    private static final double ROWS_ROOM = 9;
    private static final double EDGE_ROOM = 0.5;
    private static final double WORD_CLEAR = 0.3;

    /** Between words and the edge of a window; a page has wider margins. */
    private static final double SCREEN_EDGE = 2.5;

    private static final double LEADER_CLEAR = 0.3;

    public static MapLayout of(MapSpec spec) {
        if (spec.scale() > 0) {
            return at(spec, spec.scale());
        }
        Envelope extent = spec.damage().face().outline().getEnvelopeInternal();
        Box deck = deckBox(spec);
        MapLayout best = null;
        double least = Double.MAX_VALUE;
        int tried = 0;
        for (double scale : SCALES) {
            boolean fits = extent.getWidth() / scale <= deck.width() && extent.getHeight() / scale <= deck.height();
            if (fits && tried < TRIES) {
                MapLayout layout = at(spec, scale);
                double cost = layout.cost() + STEP_COST * tried++;
                if (cost < least) {
                    least = cost;
                    best = layout;
                }
                if (layout.labelledInFull()) {
                    break;
                }
            }
        }
        return best != null ? best : at(spec, SCALES[SCALES.length - 1]);
    }

    /** Paper the deck itself may use. */
    private static Box deckBox(MapSpec spec) {
        double left = spec.showsDatum() ? DATUM_ROOM : EDGE_ROOM;
        double right = spec.shows(Layer.VOICE_GRID) ? ROWS_ROOM : EDGE_ROOM;
        double ends = spec.shows(Layer.VOICE_GRID) ? VoiceGridMark.MARGIN : EDGE_ROOM;
        Box b = spec.box();
        return new Box(b.x() + left, b.y() + ends, b.width() - left - right, b.height() - 2 * ends);
    }

    private static MapLayout at(MapSpec spec, double scale) {
        Box deck = deckBox(spec);
        Envelope extent = spec.damage().face().outline().getEnvelopeInternal();
        PlanView view = PlanView.centred(spec.whole().face(), extent, scale, deck.middleX(), deck.middleY());
        return new Builder(spec, view, deck).build();
    }

    /** Laid out where a person has moved the plan to, instead of where it fits best. */
    public static MapLayout seen(MapSpec spec, PlanView view) {
        return new Builder(spec, view, deckBox(spec)).build();
    }

    /** Everything labelled has all its words beside it. */
    boolean labelledInFull() {
        List<LabelSubject> subjects = LabelSubject.of(spec, view, filled);
        for (int i = 0; i < labels.size(); i++) {
            if (!labels.get(i).led()
                    || !labels.get(i).lines().equals(subjects.get(i).full())) {
                return false;
            }
        }
        return true;
    }

    public VoiceGrid grid() {
        return grid(spec);
    }

    private static VoiceGrid grid(MapSpec spec) {
        return VoiceGrid.of(spec.whole().face(), spec.damage().face().outline().getEnvelopeInternal());
    }

    @Nullable
    public DatumMark datum() {
        DatumMark mark = new DatumMark(view.datumX(), view.datumY(), view.yDown());
        return spec.showsDatum() && spec.box().holds(mark.box()) ? mark : null;
    }

    public double rowNamesX() {
        return rowNamesX(grid(), view);
    }

    private static double rowNamesX(VoiceGrid grid, PlanView view) {
        return view.x(grid.extent().getMaxX()) + VoiceGridMark.ROW_NAMES_GAP;
    }

    /** The steps of laying out, each keeping clear of those before. */
    private static final class Builder {
        private final MapSpec spec;
        private final PlanView view;
        private final Box deckBox;
        private final Polygon deck;
        private final FilledSpaces filled;
        private final Marks marks;
        private final List<ReadingMark> readings;
        private final Obstacles hard = new Obstacles();
        private final Obstacles soft = new Obstacles();
        private final Obstacles outside = new Obstacles();

        Builder(MapSpec spec, PlanView view, Box deckBox) {
            this.spec = spec;
            this.view = view;
            this.deckBox = deckBox;
            this.deck = view.onPaper(spec.damage().face().outline());
            this.filled = FilledSpaces.of(spec);
            this.marks = Marks.of(spec, view, filled);
            this.readings = spec.shows(Layer.READINGS) ? ReadingMarks.of(spec, view) : filled.taps(view);
        }

        MapLayout build() {
            hard.addAll(marks.fittings());
            hard.addAll(marks.probes());
            hard.addAll(marks.holes());
            hard.addAll(marks.tags());
            if (spec.shows(Layer.HELD_HOLES)) {
                Marks.holes(spec)
                        .forEach(h -> hard.add(HoleMark.of(h, view).box().grown(HELD)));
            }
            soft.addAll(readings);
            Ground ground = new Ground(labelBox(), deck);
            List<Mark> sheet = spec.shows(Layer.SCALE_AND_UPHILL) ? SheetMarks.inCorner(spec, view, ground) : List.of();
            claimOutside(sheet);
            List<HoleLabel> holes = HoleLabels.place(marks, spec.shows(Layer.DEPTH_STOPS), spec.measure(), hard);
            hard.addAll(holes);
            List<NameMark> names = names();
            names.forEach(n -> hard.add(n.box().grown(WORD_CLEAR)));
            names.forEach(n -> outside.add(n.box().grown(WORD_CLEAR)));
            LabelPlacer.Result result = labels(ground);
            List<RegionLabel> labels = cleared(result.labels());
            labels.forEach(l -> l.claim(hard, WORD_CLEAR, LEADER_CLEAR));
            List<Front> fronts = Front.of(filled, view, hard);
            List<ReadingMark> here =
                    readings.stream().filter(r -> r.box().meets(spec.box())).toList(); // one may lie far off the deck
            List<ReadingMark> shown = spec.shows(Layer.FILL_CHECK)
                    ? ReadingMarks.thinnedTaps(here, hard)
                    : ReadingMarks.thinned(here, hard);
            return new MapLayout(
                    spec,
                    view,
                    marks,
                    shown,
                    readings.size(),
                    names,
                    labels,
                    holes,
                    sheet,
                    gridArea(),
                    filled,
                    fronts,
                    result.cost() + READING_LOST * (readings.size() - shown.size()));
        }

        private static final double READING_LOST = 2;

        /** A hole in hand is drawn so much larger about its mark, and held it grows. */
        private static final double HELD = 2.6;

        private static final double ROW_NAMES_HALF = 2.2;

        /** Words may stand beside the deck everywhere between the letters, but not under the row names. */
        private Box labelBox() {
            double right =
                    spec.shows(Layer.VOICE_GRID) ? deckBox.right() : spec.box().right();
            double left = Math.max(spec.box().x(), SCREEN_EDGE);
            return new Box(left, deckBox.y(), right - left, deckBox.height());
        }

        private Box gridArea() {
            return new Box(spec.box().x(), deckBox.y(), spec.box().width(), deckBox.height());
        }

        private void claimOutside(List<Mark> sheet) {
            if (spec.shows(Layer.VOICE_GRID)) {
                Envelope e = deck.getEnvelopeInternal();
                double x = e.getMaxX() + VoiceGridMark.ROW_NAMES_GAP;
                outside.add(Box.between(x, e.getMinY(), x, e.getMaxY()).grown(ROW_NAMES_HALF));
            }
            sheet.forEach(m -> outside.add(m.box().grown(1.5)));
            Stream.of(marks.tags(), marks.probes(), marks.fittings()) // they may reach over the edge
                    .flatMap(List::stream)
                    .flatMap(m -> m.parts().stream())
                    .forEach(part -> outside.add(part.grown(WORD_CLEAR)));
            DatumMark datum = new DatumMark(view.datumX(), view.datumY(), view.yDown());
            if (spec.showsDatum() && spec.box().holds(datum.box())) {
                outside.add(datum.box().grown(0.5));
                datum.parts().forEach(hard::add);
            }
        }

        private List<NameMark> names() {
            if (!spec.shows(Layer.FEATURE_NAMES)) {
                return new ArrayList<>();
            }
            Obstacles all = hard.copy();
            if (spec.shows(Layer.VOICE_GRID)) {
                VoiceGrid grid = grid(spec);
                VoiceGridMark.boxes(grid, view, gridArea(), rowNamesX(grid, view))
                        .forEach(all::add);
            }
            return NamePlacer.place(spec, view, all, soft);
        }

        /** Ids that stand on their regions, moved off what stands there. */
        private List<RegionLabel> cleared(List<RegionLabel> labels) {
            List<LabelSubject> subjects = LabelSubject.of(spec, view, filled);
            Obstacles taken = hard.copy();
            labels.stream().filter(RegionLabel::led).forEach(l -> l.claim(taken, WORD_CLEAR, LEADER_CLEAR));
            List<RegionLabel> cleared = new ArrayList<>();
            for (int i = 0; i < labels.size(); i++) {
                RegionLabel label = labels.get(i);
                RegionLabel clear =
                        label.led() ? label : label.clear(subjects.get(i).area(), taken, WORD_CLEAR);
                cleared.add(clear);
                if (!clear.led()) {
                    clear.claim(taken, WORD_CLEAR, LEADER_CLEAR);
                }
            }
            return cleared;
        }

        private LabelPlacer.Result labels(Ground ground) {
            List<LabelSubject> subjects = LabelSubject.of(spec, view, filled);
            return LabelPlacer.place(subjects, ground, outside, new Leads(deck, hard, soft));
        }
    }
}
