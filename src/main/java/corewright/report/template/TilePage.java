package corewright.report.template;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.template.Job;
import corewright.drawing.template.Leaf;
import corewright.drawing.template.TilePlan;
import corewright.drawing.template.Tiling;
import corewright.drawing.template.Tiling.Tile;
import corewright.repair.plan.Cautions;
import corewright.repair.plan.Hole;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.report.page.Wording;
import corewright.survey.Face;
import java.util.ArrayList;
import java.util.List;

/** One sheet: what it is, its frame to cut along, rings at the seams, what to do before a tool goes in, and two bars that prove its scale. */
final class TilePage {
    private static final double BAR = 100;
    private static final double TICK = 8;
    private static final double KEY_WIDTH = 50;
    private static final double VERTICAL_BAR = 11;
    private static final double FROM_FOOT = 9;
    private static final Type TITLE = new Type(Typeface.TEXT_BOLD, 18);
    private static final Type HEAD = new Type(Typeface.TEXT_BOLD, 10.5);
    private static final Type FIGURE = new Type(Typeface.CONDENSED, 7);
    private static final Type SMALL = new Type(Typeface.TEXT, 8);
    private static final Prose WORDS = new Prose(9.5, 4.3);
    private static final Prose STEPS = new Prose(8.5, 3.7);

    private final Job job;
    private final Leaf leaf;
    private final Tiling tiling;
    private final Tile tile;
    private final Measure measure;

    TilePage(Job job, Leaf leaf, Tiling tiling, Tile tile) {
        this.job = job;
        this.leaf = leaf;
        this.tiling = tiling;
        this.tile = tile;
        measure = Measure.of(job.assessment().survey());
    }

    /** @param sheet which of all, in words */
    void paint(Paper paper, String sheet) {
        List<Seam> seams = Seam.of(job, leaf, tiling, tile);
        new TilePlan(job, leaf, tile, seams.stream().map(Seam::box).toList()).paint(paper);
        frame(paper);
        seams.forEach(s -> s.paint(paper));
        head(paper, sheet);
        steps(paper);
        bars(paper);
        if (!alone()) {
            double right = leaf.widthMm() - Leaf.RIGHT;
            double top = leaf.printed().bottom() + 5;
            SheetKey.paint(paper, tiling, tile, new Box(right - KEY_WIDTH, top, KEY_WIDTH, leaf.heightMm() - 8 - top));
        }
    }

    private boolean alone() {
        return tiling.tiles().size() == 1;
    }

    private Face face() {
        return job.damage().face();
    }

    private void frame(Paper paper) {
        Box frame = leaf.frame();
        Box printed = leaf.printed();
        paper.draw(frame.shape(), Pen.MARK);
        for (double x : new double[] {frame.x(), frame.right()}) {
            paper.line(Pen.MARK, x, frame.y() - 2, x, frame.y() - 2 - TICK);
            paper.line(Pen.MARK, x, printed.bottom() + 1, x, printed.bottom() + 4);
        }
        for (double y : new double[] {frame.y(), frame.bottom()}) {
            paper.line(Pen.MARK, frame.x() - 2, y, frame.x() - 2 - TICK / 2, y);
            paper.line(Pen.MARK, printed.right() + 1, y, printed.right() + 5, y);
        }
    }

    private void head(Paper paper, String sheet) {
        double right = leaf.widthMm() - Leaf.RIGHT;
        String name = alone() ? "one sheet" : "tile " + tile.name();
        double room = right - Leaf.LEFT - TITLE.width(name) - 6;
        Type title = TITLE.within(job.title(), room, 1);
        paper.part(Part.TITLE, p -> {
            p.text(title.wrap(job.title(), room).get(0), Leaf.LEFT, 15, title, Anchor.LEFT);
            p.text(name, right, 15, TITLE, Anchor.RIGHT);
        });
        String boat = Titles.boat(job.assessment().survey().heading());
        String full = "full size, 1 : 1 · print at 100" + Wording.TIED + "%, no scaling";
        double width = right - Leaf.LEFT - SMALL.width(sheet) - 6;
        paper.text(sheet, right, 20.4, SMALL, Anchor.RIGHT);
        Type line = new Type(Typeface.TEXT, WORDS.points());
        String where = boat + ", " + face().name() + " · ";
        Type fitting = line.within(where + full, width, 1);
        paper.text(
                fitting.wrap(where + full, width).get(0).replace(Wording.TIED, " "),
                Leaf.LEFT,
                20.4,
                fitting,
                Anchor.LEFT);
        List<String> said = new ArrayList<>();
        said.add(sides());
        job.before().forEach(b -> said.add(Prose.bold(Prose.plain(b))));
        String all = measure.say(String.join(" ", said));
        Prose prose = WORDS;
        double most = leaf.frame().y() - 5 - 22;
        while (prose.height(all, right - Leaf.LEFT) > most && prose.points() > 6.5) {
            prose = new Prose(prose.points() - 0.5, prose.leadMm() * (prose.points() - 0.5) / prose.points());
        }
        prose.paint(paper, all, Leaf.LEFT, 22, right - Leaf.LEFT, Anchor.LEFT);
    }

    /** From where it is seen, and which side is up. */
    private String sides() {
        String seen = Wording.sentence(Orientation.of(face())) + ".";
        boolean below = seen.startsWith("Seen from below");
        return below
                ? Prose.bold("Mirrored, for work from below.") + " " + seen + " Printed side towards you."
                : seen + " Printed side towards you.";
    }

    private void steps(Paper paper) {
        double top = leaf.printed().bottom() + 4.6;
        double width = leaf.widthMm() - Leaf.LEFT - Leaf.RIGHT - (alone() ? 0 : KEY_WIDTH + 5);
        boolean cut = job.cut().isPresent();
        String before = "Before " + (cut ? "cutting" : "drilling");
        paper.part(Part.HEADING, p -> p.text(before, Leaf.LEFT, top + HEAD.capMm(), HEAD, Anchor.LEFT));
        List<String> steps = new ArrayList<>();
        steps.add("Measure both bars: "
                + (measure == Measure.METRIC
                        ? "100 mm each, within half a millimetre"
                        : "3 15/16 in each, within 1/64 in")
                + ". If not, print again at 100" + Wording.TIED + "%.");
        if (!alone()) {
            steps.add(
                    "Cut along the frame at the left and at the top. Lay each sheet on its neighbour's strip until the rings"
                            + " close.");
        }
        steps.add("Chalk the two lines of the heavy cross on the "
                + (face().posture() == Face.Posture.DECK ? "deck" : "face")
                + ", measured from the datum, and lay the cross on them. Ramp: which side is high.");
        steps.add(Cautions.before(cut ? "cutting" : "drilling", face().posture()));
        steps.add(
                cut
                        ? "Chain line: cut, the outer skin only. Heavy line: likely damage. Broken: cannot be ruled out."
                        : drill());
        double y = top + HEAD.capMm() + 1.2;
        for (int i = 0; i < steps.size(); i++) {
            paper.text(i + 1 + "", Leaf.LEFT, y + (STEPS.leadMm() + SMALL.capMm()) / 2, SMALL, Anchor.LEFT);
            y += STEPS.paint(paper, steps.get(i), Leaf.LEFT + 4, y, width - 4, Anchor.LEFT);
        }
    }

    private String drill() {
        String edges = " Heavy line: likely damage. Broken: cannot be ruled out.";
        if (!job.drying().isEmpty()) {
            return measure.say("Drill "
                            + Figures.atMost(
                                    job.assessment()
                                            .survey()
                                            .settings()
                                            .drilling()
                                            .holeDiameterMm(),
                                    1)
                            + " mm at each cross, " + job.drying().size()
                            + " in all, with the collar that the card tells.")
                    + edges;
        }
        double bit = job.holes().stream()
                .filter(Hole::drilled)
                .mapToDouble(Hole::diameterMm)
                .max()
                .orElse(0);
        return measure.say("Drill " + Figures.atMost(bit, 1)
                        + " mm. Set the collar to the figure under the bar, hole by hole"
                        + (measure == Measure.METRIC ? ", in mm." : ", in inches."))
                + edges;
    }

    /** 100 mm along the foot and 100 mm up the left. */
    private void bars(Paper paper) {
        String length = measure == Measure.METRIC ? "100 mm" : "3 15/16 in"; // 100.0125 mm
        double y = leaf.heightMm() - FROM_FOOT;
        double x = VERTICAL_BAR;
        double foot = leaf.frame().bottom();
        paper.line(Pen.LEADER, Leaf.LEFT, y, Leaf.LEFT + BAR, y);
        paper.line(Pen.LEADER, x, foot, x, foot - BAR);
        for (int mm = 0; mm <= BAR; mm += 5) {
            double tall = mm % 10 == 0 ? 2.4 : 1.4;
            paper.line(Pen.LEADER, Leaf.LEFT + mm, y, Leaf.LEFT + mm, y - tall);
            paper.line(Pen.LEADER, x, foot - mm, x - tall, foot - mm);
        }
        paper.text("check: " + length, Leaf.LEFT + BAR + 2, y, FIGURE, Anchor.LEFT);
        paper.turnedText(
                "check: " + length + " this way too", x + 3.6, foot - BAR / 2, -Math.PI / 2, FIGURE, Anchor.CENTRE);
    }
}
