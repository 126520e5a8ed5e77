package corewright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Where everything of a map goes.
 *
 * @param readings those there is room for
 * @param readingsTotal all there are
 * @param gridArea between the letters of the voice grid
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
        Box gridArea) {
    private static final double[] SCALES = {5, 10, 20, 25, 50, 100, 200};

    static MapLayout of(MapSpec spec) {
        Envelope extent = spec.damage().face().outline().getEnvelopeInternal();
        double scale = spec.scale() > 0 ? spec.scale() : largest(extent, spec.box());
        Box box = spec.box();
        PlanView view = PlanView.centred(extent, scale, box.middleX(), box.middleY());
        List<ReadingMark> all = spec.shows(Layer.READINGS) ? ReadingMarks.of(spec, view) : List.of();
        Marks marks = Marks.of(spec, view);
        Obstacles taken = new Obstacles();
        taken.addAll(marks.fittings());
        taken.addAll(marks.probes());
        taken.addAll(marks.tags());
        List<ReadingMark> shown = ReadingMarks.thinned(all, taken);
        return new MapLayout(
                spec,
                view,
                marks,
                shown,
                all.size(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>(),
                box.grown(-VoiceGridMark.MARGIN));
    }

    private static double largest(Envelope extent, Box box) {
        for (double scale : SCALES) {
            if (extent.getWidth() / scale <= box.width() && extent.getHeight() / scale <= box.height()) {
                return scale;
            }
        }
        return SCALES[SCALES.length - 1];
    }

    VoiceGrid grid() {
        return VoiceGrid.of(spec.damage().face());
    }

    DatumMark datum() {
        return new DatumMark(view.datumX(), view.datumY());
    }

    double rowNamesX() {
        return view.x(grid().extent().getMaxX()) + VoiceGridMark.rowNamesGap();
    }
}
