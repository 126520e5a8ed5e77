package corewright.report.compare;

import corewright.assessment.Assessment;
import corewright.comparison.Comparison;
import corewright.comparison.FaceComparison;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.marks.ScaleBar;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.drawing.plates.MapPainter;
import corewright.report.page.PlateFiles;
import corewright.survey.Face;
import corewright.survey.Heading;
import corewright.survey.settings.Settings.Terms;
import java.awt.Graphics2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.BiConsumer;
import org.locationtech.jts.geom.Envelope;

/** One face three times, in one scale and with the same patterns: before, after, and what changed. */
final class FaceMaps {
    private static final double CAPTION = 6;
    private static final double LABELS = 16;
    private static final double GAP = 4;
    private static final Type HEAD = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type SIDE = new Type(Typeface.TEXT, 8);
    private static final String CHANGED = "What changed";

    /** Of a picture, with its margins. */
    private static final double PICTURE_WIDTH = 200;

    private static final double PICTURE_HEIGHT = 150;
    private static final double MARGIN = 6;
    private static final double FOOT = 18;

    private final Comparison comparison;
    private final FaceComparison face;
    private final Face plan;
    private final Measure measure;

    FaceMaps(Comparison comparison, FaceComparison face) {
        this.comparison = comparison;
        this.face = face;
        plan = comparison.before().survey().face(face.name());
        measure = Measure.of(comparison.after().survey());
    }

    /** One below the other for a long face, the first two beside each other else. */
    void paint(Paper paper, Box room) {
        paper.figure(
                "The face before, after, and what changed, in one scale; the tables below have it in figures.",
                p -> draw(p, room));
    }

    private void draw(Paper paper, Box room) {
        Box row = new Box(room.x(), room.y(), room.width(), (room.height() - 2 * GAP) / 3);
        Box half = new Box(room.x(), room.y(), (room.width() - GAP) / 2, (room.height() - GAP) / 2);
        boolean rows = scale(row) <= scale(half);
        double scale = rows ? scale(row) : scale(half);
        Box first = rows ? row : half;
        Box second = rows ? row.movedTo(room.x(), row.bottom() + GAP) : half.movedTo(half.right() + GAP, room.y());
        Box third = rows ? row.movedTo(room.x(), second.bottom() + GAP) : half.movedTo(room.x(), half.bottom() + GAP);
        before(paper, first, scale);
        after(paper, second, scale);
        change(paper, third, scale);
        if (rows) {
            double left = third.x() + HEAD.width(CHANGED) + 6;
            ChangeMap.legend(paper, face, left, third.y() - 0.6, room.right() - left);
            side(paper, first, scale);
        } else {
            double left = second.x();
            double top = third.y() + CAPTION;
            double taken = ChangeMap.legend(paper, face, left, top, room.right() - left);
            new ScaleBar(left + 2, top + taken + 8, scale, measure).paint(paper);
            double y = top + taken + 18;
            for (String line : SIDE.wrap(words(scale), second.width())) {
                paper.text(line, left, y, SIDE, Anchor.LEFT);
                y += SIDE.leadMm();
            }
        }
    }

    /** Comb and words at the right end of a map's caption. */
    private void side(Paper paper, Box box, double scale) {
        double length = new ScaleBar(0, 0, scale, measure).length();
        new ScaleBar(box.right() - length - 6, box.y() + 3, scale, measure).paint(paper);
        double y = box.y() + 2;
        for (String line : SIDE.wrap(words(scale), 60)) {
            paper.text(line, box.right() - length - 14, y, SIDE, Anchor.RIGHT);
            y += SIDE.leadMm();
        }
    }

    private String words(double scale) {
        return "all three 1 : " + Figures.atMost(scale, 0) + ", " + Orientation.of(plan)
                + "; before and after with each survey’s own numbers";
    }

    private void before(Paper paper, Box box, double scale) {
        map(paper, "Before, ", comparison.before().assessment(), box, scale);
    }

    private void after(Paper paper, Box box, double scale) {
        map(paper, "After, ", comparison.after().assessment(), box, scale);
    }

    private void map(Paper paper, String caption, Assessment assessment, Box box, double scale) {
        Heading heading = assessment.survey().heading();
        caption(paper, caption + Figures.date(heading.surveyed()), box);
        MapPainter.paint(
                paper,
                new MapSpec(assessment, face.name(), deck(box), scale, Set.of(Layer.REGION_LABELS), MapWording.OWNER));
    }

    private void change(Paper paper, Box box, double scale) {
        caption(paper, CHANGED, box);
        ChangeMap.paint(paper, plan, face, deck(box), scale);
    }

    private static void caption(Paper paper, String words, Box box) {
        paper.text(words, box.x(), box.y() + HEAD.capMm() + 0.6, HEAD, Anchor.LEFT);
    }

    private static Box deck(Box box) {
        return new Box(box.x(), box.y() + CAPTION, box.width(), box.height() - CAPTION);
    }

    /** As large as fits, in whole numbers. */
    private double scale(Box box) {
        Envelope extent = plan.outline().getEnvelopeInternal();
        Box deck = deck(box);
        return Math.ceil(
                Math.max(extent.getWidth() / (deck.width() - 3), extent.getHeight() / (deck.height() - LABELS)));
    }

    /** Three pictures of one scale: {@code <name>-before}, {@code -after} and {@code -change}. */
    void pictures(Path folder, String name) throws IOException {
        picture(folder, name + "-before", this::beforeAlone);
        picture(folder, name + "-after", this::afterAlone);
        picture(folder, name + "-change", this::changeAlone);
    }

    private void beforeAlone(Paper paper, Box box) {
        before(paper, box, scale(box));
    }

    private void afterAlone(Paper paper, Box box) {
        after(paper, box, scale(box));
    }

    private void changeAlone(Paper paper, Box box) {
        change(paper, box, scale(box));
        ChangeMap.legend(paper, face, box.x(), box.bottom() + FOOT - 6, box.width());
    }

    private void picture(Path folder, String name, BiConsumer<Paper, Box> painting) throws IOException {
        Terms.Sign decimal = comparison.after().survey().settings().terms().decimal();
        Box box = new Box(MARGIN, MARGIN, PICTURE_WIDTH - 2 * MARGIN, PICTURE_HEIGHT - 2 * MARGIN - FOOT);
        PlateFiles.picture(folder, name, PICTURE_WIDTH, PICTURE_HEIGHT, (Graphics2D graphics) -> {
            Paper paper = new Paper(graphics, decimal);
            painting.accept(paper, box);
            double scale = scale(box);
            new ScaleBar(box.x() + 2, box.bottom() + 6, scale, measure).paint(paper);
            String words = "1 : " + Figures.atMost(scale, 0) + ", " + Orientation.of(plan);
            paper.text(words, box.right(), box.bottom() + 6, SIDE, Anchor.RIGHT);
        });
    }
}
