package corewright.drawing.plates;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Paper;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.RegionLabel;
import java.awt.Graphics2D;
import java.util.List;

/** One lying sheet of one face, laid out and ready to paint. */
public final class Plate {
    /** What the reading column takes at the right of the map. */
    private static final double COLUMN = 72;

    private final MapLayout layout;
    private final PlateKind kind;
    private final String detail;
    private final LyingSheet paper;
    private final int sheet;
    private final int sheets;

    /** @param detail the region that leads the one space it shows, empty where it shows all there is */
    Plate(MapSpec spec, PlateKind kind, String detail, int sheet, int sheets) {
        this.layout = MapLayout.of(spec);
        this.kind = kind;
        this.detail = detail;
        this.paper = LyingSheet.of(spec.assessment().survey());
        this.sheet = sheet;
        this.sheets = sheets;
    }

    /** Where the map stands. */
    static Box mapBox(LyingSheet paper) {
        return new Box(LyingSheet.LEFT, 19.5, paper.rightMm() - COLUMN - LyingSheet.LEFT, 151);
    }

    /** File name without ending: {@code foredeck-condition}, {@code foredeck-fill-check-R1}. */
    public String name() {
        return layout.spec().face() + "-" + kind.word() + (detail.isEmpty() ? "" : "-" + detail);
    }

    /** The sheet's title: vessel, face, subject. */
    public String title() {
        return PlateFrame.title(layout.spec(), subject());
    }

    String subject() {
        return detail.isEmpty() ? kind.title() : kind.title() + " " + detail;
    }

    public PlateKind kind() {
        return kind;
    }

    /** Survey millimetres to one of paper. */
    public double scale() {
        return layout.view().scale();
    }

    public double widthMm() {
        return paper.widthMm();
    }

    public double heightMm() {
        return paper.heightMm();
    }

    /** Regions whose words found no room on the map; the reading column names them. */
    public List<String> unlabelled() {
        return layout.labels().stream()
                .filter(l -> !l.led())
                .map(RegionLabel::region)
                .toList();
    }

    /** Paints the sheet in its middle; one unit must be one millimetre, the origin top left. */
    public void paint(Graphics2D graphics) {
        if (paper.shiftMm() != 0) { // even a shift by nothing would stand in a file of vectors
            graphics.translate(paper.shiftMm(), 0);
        }
        paint(new Paper(
                graphics, layout.spec().assessment().survey().settings().terms().decimal()));
    }

    /** Paints the sheet as it is laid out, on paper of any kind that stands in the middle of the sheet. */
    public void paint(Paper on) {
        MapPainter.paint(on, layout);
        new PlateFrame(on, layout, kind, subject(), sheet, sheets).paint();
        new ReadingColumn(on, layout, kind).paint();
    }

    public MapLayout layout() {
        return layout;
    }
}
