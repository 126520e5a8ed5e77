package corewright.drawing.placing;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PlanView;
import corewright.drawing.kit.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Where the front of a simulated fill stands at a whole minute, on a fill check.
 *
 * @param figure middle of the minute's figure, clear of taps and hollow places; empty where the line has no room for it
 */
public record Front(ArrivalLines.Line line, Optional<Coordinate> figure) {
    private static final Type MINUTE = Type.READING;
    private static final double APART = 4;

    /** On smaller maps the lines hide the taps. Chosen by eye. */
    private static final double SMALLEST_SCALE = 10;

    /** Of every space that was felt for warmth; taps after cure ask nothing of the front. */
    static List<Front> of(FilledSpaces filled, PlanView view, Obstacles marks) {
        Obstacles taken = marks.copy();
        List<Front> fronts = new ArrayList<>();
        if (view.scale() > SMALLEST_SCALE) {
            return fronts;
        }
        taken.addAll(filled.taps(view));
        filled.shots().forEach(s -> taken.add(box(view.onPaper(s.area()).getEnvelopeInternal())));
        for (FilledSpaces.Space space : filled.spaces()) {
            if (!space.warmth().isEmpty()) {
                space.arrivalS().ifPresent(r -> ArrivalLines.of(r, view).forEach(l -> fronts.add(placed(l, taken))));
            }
        }
        return fronts;
    }

    private static Front placed(ArrivalLines.Line line, Obstacles taken) {
        Coordinate[] along = line.onPaper().getCoordinates();
        for (int i = 0; i < along.length; i++) {
            // from the middle outwards
            int step = i % 2 == 0 ? i / 2 : along.length - (i + 1) / 2;
            Coordinate at = along[(along.length / 2 + step) % along.length];
            Box box = box(String.valueOf(line.minute()), at);
            if (taken.free(box.grown(0.4))) {
                taken.add(box.grown(APART));
                return new Front(line, Optional.of(at));
            }
        }
        return new Front(line, Optional.empty());
    }

    private static Box box(Envelope e) {
        return new Box(e.getMinX(), e.getMinY(), e.getWidth(), e.getHeight());
    }

    private static Box box(String words, Coordinate at) {
        double width = MINUTE.width(words);
        return new Box(at.x - width / 2, at.y - MINUTE.capMm() / 2, width, MINUTE.capMm());
    }

    public void paint(Paper paper) {
        paper.draw(PlanView.shape(line.onPaper()), Pen.LEADER);
        figure.ifPresent(at -> paper.haloText(
                String.valueOf(line.minute()), at.x, at.y + MINUTE.capMm() / 2, MINUTE, Paper.Anchor.CENTRE, 0.5));
    }
}
