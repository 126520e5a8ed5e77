package corewright.report.owner;

import corewright.assessment.Assessment;
import corewright.damage.Quantiles;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.plates.DeflectionPicture;
import corewright.report.page.PageFrame;
import corewright.report.page.PageSize;
import corewright.report.page.PdfFile;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import corewright.report.page.Titles;
import corewright.report.page.Wording;
import corewright.stiffness.LoadCase;
import corewright.stiffness.PanelStiffness;
import corewright.stiffness.State;
import corewright.survey.Face;
import corewright.survey.Face.Posture;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** What the damage took from the panel that lost most on a face, and what repair gives back. */
final class OwnerStiffnessPage {
    private static final double APART = 8;
    private static final double GAP = 4;
    private static final double MOST_HIGH = 105;
    private static final double LEAST_HIGH = 30;
    private static final List<State> PICTURES = List.of(State.AS_FOUND, State.AFTER_PLAN);

    private final Assessment assessment;
    private static final int MOST_CASES = 6;

    private final PanelStiffness panel;
    private final Measure measure;

    private OwnerStiffnessPage(Assessment assessment, PanelStiffness panel) {
        this.assessment = assessment;
        this.panel = panel;
        this.measure = Measure.of(assessment.survey());
    }

    /** One page where the face has a damaged panel, else none. */
    static List<PdfFile.Painting> of(Assessment assessment, String face) {
        return assessment.stiffness().worst(face).stream()
                .<PdfFile.Painting>map(p -> new OwnerStiffnessPage(assessment, p)::paint)
                .toList();
    }

    private void paint(Paper paper) {
        var heading = assessment.survey().heading();
        PageFrame.head(
                paper,
                Titles.boat(heading) + " · " + Prose.plain(panel.panel().face()) + " · stiffness",
                Titles.data(heading));
        double y = PageFrame.BODY + 2;
        y += Prose.TEXT.paint(paper, measure.say(words()), PageFrame.LEFT, y, PageFrame.FULL_WIDTH, Anchor.LEFT) + 5;
        y += Prose.TEXT.paint(
                        paper,
                        Prose.bold(
                                        deck()
                                                ? "How far the deck gives under one foot, in " + length()
                                                : "How far it gives under a load at one place, in " + length())
                                + measure.say(" (1 kN, about 100 kg, on 100 × 100 mm)"),
                        PageFrame.LEFT,
                        y,
                        PageFrame.FULL_WIDTH,
                        Anchor.LEFT)
                + 3;
        List<RuledTable> tables = panel.cases().isEmpty() ? List.of(table()) : List.of(table(), cases());
        String notes = measure.say(notes());
        double below = GAP + Prose.NOTE.height(notes, PageFrame.FULL_WIDTH);
        for (RuledTable table : tables) {
            below += table.height() + GAP;
        }
        y = pictures(paper, y, PageSize.of(assessment.survey()).bodyEnd() - below) + GAP;
        for (RuledTable table : tables) {
            y += table.paint(paper, PageFrame.LEFT, y, 0, table.size()) + GAP;
        }
        Prose.NOTE.paint(paper, notes, PageFrame.LEFT, y, PageFrame.FULL_WIDTH, Anchor.LEFT);
    }

    private boolean deck() {
        return assessment.survey().face(panel.panel().face()).posture() == Posture.DECK;
    }

    private String words() {
        long others = assessment.stiffness().of(panel.panel().face()).stream()
                        .filter(PanelStiffness::damaged)
                        .count()
                - 1;
        String rest = others == 0
                ? "It is the only panel with damage on this face."
                : "It lost the most of the " + Wording.count((int) others + 1) + " panels with damage on this face.";
        return "This is the panel " + Prose.plain(panel.panel().name()) + ", "
                + Prose.plain(PlaceWords.of(
                        assessment.survey().face(panel.panel().face()),
                        panel.panel().area()))
                + (deck() ? ", the deck between its supports. " : ", what lies between its supports. ") + rest
                + " Darker is softer; the lines carry the figures. The ring marks the place that is softest as found.";
    }

    /** @param bottom where they end at the latest, as all below them has its place too */
    private double pictures(Paper paper, double top, double bottom) {
        Envelope extent = panel.panel().area().getEnvelopeInternal();
        double width = (PageFrame.FULL_WIDTH - APART) / 2;
        double heads = Prose.TEXT.leadMm() + Prose.NOTE.leadMm() + 2;
        double room = bottom - top - heads - 1 - Prose.NOTE.leadMm();
        double height = Math.max(
                LEAST_HIGH, Math.min(Math.min(MOST_HIGH, room), width * extent.getHeight() / extent.getWidth()));
        List<Box> boxes = new ArrayList<>();
        List<State> shown = PICTURES.stream().filter(panel.known()::contains).toList();
        for (int i = 0; i < shown.size(); i++) {
            double left = PageFrame.LEFT + i * (width + APART);
            State state = shown.get(i);
            Prose.TEXT.paint(paper, Prose.bold(title(state)), left, top, width, Anchor.LEFT);
            Prose.NOTE.paint(
                    paper,
                    (state == State.AS_FOUND ? "the softest place gives " : "the same place would give ")
                            + mm(panel.in(state).deflectionMm()),
                    left,
                    top + Prose.TEXT.leadMm(),
                    width,
                    Anchor.LEFT);
            boxes.add(new Box(left, top + heads, width, height));
        }
        Face face = assessment.survey().face(panel.panel().face());
        double scale = DeflectionPicture.paint(paper, face, panel, shown, boxes, measure);
        String said = "1 : " + Figures.fixed(scale, 0) + " on " + PageSize.name(assessment.survey()) + ", "
                + Orientation.of(face) + ".";
        double below = top + heads + height + 1;
        return below + Prose.NOTE.paint(paper, said, PageFrame.LEFT, below, PageFrame.FULL_WIDTH, Anchor.LEFT);
    }

    private static String title(State state) {
        return switch (state) {
            case AS_BUILT -> "As built";
            case AS_FOUND -> "As found";
            case AFTER_INJECTION -> "After filling what is loose and dry, and every void";
            case AFTER_RECORE -> "After cutting out and renewing";
            case AFTER_PLAN -> "After what is advised";
        };
    }

    private RuledTable table() {
        RuledTable table = new RuledTable(List.of(
                new Column("The panel at that place", 52, Anchor.LEFT),
                new Column("Gives, " + measure.depthUnit(), 23, Anchor.RIGHT),
                new Column(measure == Measure.METRIC ? "N per mm" : "lbf per in", 23, Anchor.RIGHT),
                new Column("Of 100 as built", 28, Anchor.RIGHT),
                new Column("How sure", 48, Anchor.LEFT)));
        for (State state : panel.known()) {
            Quantiles share = panel.in(state).ofAsBuilt();
            table.row(List.of(
                    state == State.AFTER_INJECTION ? "After filling" : title(state),
                    number(panel.in(state).deflectionMm()),
                    Figures.fixed(tidy(panel.in(state).stiffnessNPerMm() * stiffnessFactor()), 0),
                    Figures.fixed(100 * share.p50(), 0),
                    sure(state, share)));
        }
        return table;
    }

    private RuledTable cases() {
        RuledTable table = new RuledTable(List.of(
                new Column("Under the loads of the survey, " + measure.depthUnit(), 79, Anchor.LEFT),
                new Column("As built", 19, Anchor.RIGHT),
                new Column("As found", 19, Anchor.RIGHT),
                new Column("Filled", 19, Anchor.RIGHT),
                new Column("Renewed", 19, Anchor.RIGHT),
                new Column("Advised", 19, Anchor.RIGHT)));
        for (LoadCase each :
                panel.cases().subList(0, Math.min(MOST_CASES, panel.cases().size()))) {
            List<String> row = new ArrayList<>();
            row.add(Prose.plain(each.name()));
            for (State state : State.values()) {
                row.add(panel.known().contains(state) ? number(each.in(state).deflectionMm()) : "");
            }
            table.row(row);
        }
        return table;
    }

    private static String sure(State state, Quantiles share) {
        String range = Wording.range(100 * share.p10(), 100 * share.p90(), 0);
        return switch (state) {
            case AS_BUILT -> "calculated, core all sound";
            case AS_FOUND -> range;
            case AFTER_INJECTION -> range + ", if the fill check passes";
            case AFTER_RECORE -> "with the same core, well bonded";
            case AFTER_PLAN -> range + ", if done as planned";
        };
    }

    /** Three digits are more than is known. */
    private static double tidy(double value) {
        return value < 1000 ? value : 10 * Math.rint(value / 10);
    }

    private String notes() {
        StringBuilder notes = new StringBuilder();
        panel.notes().forEach(n -> notes.append(Prose.plain(n)).append(' '));
        notes.append(PlannedMargins.words(assessment.survey().face(panel.panel().face()), panel));
        notes.append(
                "Ranges come from how far the damage reaches, how deep it is, how soft wet core is and how stiff foam"
                        + " that nobody has tested yet may be, all together, and from how far map and calculation were off on invented decks. Each panel is"
                        + " calculated by itself, held at its supports, by finite elements. ");
        notes.append(Prose.bold(
                "These figures compare; they do not clear a deck for use. A naval architect or surveyor does."));
        return notes.toString();
    }

    private String mm(double value) {
        return number(value) + " " + measure.depthUnit();
    }

    private String length() {
        return measure == Measure.METRIC ? "millimetres" : "inches";
    }

    /** 1 N/mm is 5.71 lbf/in (NIST SP 811, appendix B.8). */
    private double stiffnessFactor() {
        return measure == Measure.METRIC ? 1 : Measure.MM_PER_INCH / 4.4482216;
    }

    private String number(double valueMm) {
        return measure.deflectionFigure(valueMm);
    }
}
