package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.FaceDamage;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PrintRule;
import corewright.report.page.PageSize;
import corewright.report.page.Prose;
import org.locationtech.jts.geom.Envelope;

/** The owner's map over the full width, with its legend above, its scale and the rule that proves it below. */
final class OwnerPlan {
    /** For comb and ramp, where the deck leaves them no corner. */
    private static final double MARKS_ROOM = 8;

    /** No lower than this, however flat the face. */
    private static final double LEAST = 60;

    private static final double SCALE_ROOM = 11;

    /** Foot of the rule below the map. */
    private static final double RULE = 10;

    private static final Prose SCALE = new Prose(7.5, 3.4);

    private OwnerPlan() {}

    /** Height that map, legend and scale take, at most that of the room. */
    static double height(Assessment assessment, FaceDamage face, double widthMm, double roomMm) {
        Envelope extent = face.face().outline().getEnvelopeInternal();
        double labels = face.regions().isEmpty() ? OwnerMap.SIDE_ROOM : OwnerMap.LABEL_ROOM;
        double map = (widthMm - OwnerMap.SIDE_ROOM) * extent.getHeight() / extent.getWidth() + labels + MARKS_ROOM;
        return Math.min(roomMm, Math.max(LEAST, map) + OwnerLegend.height(assessment, face, widthMm) + SCALE_ROOM);
    }

    /** Over the full width, its legend above it and its scale below; returns the height taken, at most the room's. */
    static double paint(Paper paper, Assessment assessment, FaceDamage face, Box room) {
        double legend = OwnerLegend.height(assessment, face, room.width());
        OwnerLegend.paint(paper, assessment, face, room);
        double height = height(assessment, face, room.width(), room.height()) - legend - SCALE_ROOM;
        Box box = new Box(room.x(), room.y() + legend, room.width(), height);
        double scale = OwnerMap.paint(paper, assessment, face, box);
        SCALE.paint(
                paper,
                "1 : " + Figures.fixed(scale, 0) + " on " + PageSize.name(assessment.survey()) + ", "
                        + Orientation.of(face.face()) + ".",
                room.x(),
                box.bottom(),
                room.width(),
                Anchor.LEFT);
        PrintRule.paint(paper, room.x(), box.bottom() + RULE, Measure.of(assessment.survey()));
        return legend + height + SCALE_ROOM;
    }
}
