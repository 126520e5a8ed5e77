package corewright.drawing.plates;

import corewright.drawing.kit.Box;
import corewright.drawing.kit.Paper;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.RegionLabel;
import java.awt.Graphics2D;
import java.util.List;

/** One A4 landscape sheet of one face, laid out and ready to paint. */
public final class Plate {
    /** The reading column and the map. */
    private static final Box MAP = new Box(12, 19.5, 201, 151);

    private final MapLayout layout;
    private final PlateKind kind;
    private final String detail;
    private final int sheet;
    private final int sheets;

    /** @param detail the region that leads the one space it shows, empty where it shows all there is */
    Plate(MapSpec spec, PlateKind kind, String detail, int sheet, int sheets) {
        this.layout = MapLayout.of(spec);
        this.kind = kind;
        this.detail = detail;
        this.sheet = sheet;
        this.sheets = sheets;
    }

    static Box mapBox() {
        return MAP;
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
        return 297;
    }

    public double heightMm() {
        return 210;
    }

    /** Regions whose words found no room on the map; the reading column names them. */
    public List<String> unlabelled() {
        return layout.labels().stream()
                .filter(l -> !l.led())
                .map(RegionLabel::region)
                .toList();
    }

    /** Paints the sheet; one unit must be one millimetre, the origin top left. */
    public void paint(Graphics2D graphics) {
        paint(new Paper(
                graphics, layout.spec().assessment().survey().settings().terms().decimal()));
    }

    /** Paints the sheet on paper of any kind. */
    public void paint(Paper paper) {
        MapPainter.paint(paper, layout);
        new PlateFrame(paper, layout, kind, subject(), sheet, sheets).paint();
        new ReadingColumn(paper, layout, kind).paint();
    }

    public MapLayout layout() {
        return layout;
    }
}
