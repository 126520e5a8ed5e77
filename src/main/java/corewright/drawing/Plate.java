package corewright.drawing;

import java.awt.Graphics2D;
import java.util.List;

/** One A4 landscape sheet of one face, laid out and ready to paint. */
public final class Plate {
    /** What a plate is about. */
    public enum Kind {
        CONDITION("condition", "condition of the core"),
        REPAIR("repair", "repair of the core");

        private final String word;
        private final String title;

        Kind(String word, String title) {
            this.word = word;
            this.title = title;
        }

        /** The end of the plate's name. */
        public String word() {
            return word;
        }

        String title() {
            return title;
        }
    }

    /** The reading column and the map. */
    private static final Box MAP = new Box(12, 19.5, 201, 151);

    private final MapLayout layout;
    private final Kind kind;
    private final int sheet;
    private final int sheets;

    Plate(MapSpec spec, Kind kind, int sheet, int sheets) {
        this.layout = MapLayout.of(spec);
        this.kind = kind;
        this.sheet = sheet;
        this.sheets = sheets;
    }

    static Box mapBox() {
        return MAP;
    }

    /** File name without ending: {@code foredeck-condition}. */
    public String name() {
        return layout.spec().face() + "-" + kind.word();
    }

    /** The sheet's title: vessel, face, subject. */
    public String title() {
        return Sheet.vessel(layout.spec()) + " · " + layout.spec().face() + " · " + kind.title();
    }

    public Kind kind() {
        return kind;
    }

    public String face() {
        return layout.spec().face();
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
        Paper paper = new Paper(graphics);
        MapPainter.paint(paper, layout);
        new Sheet(paper, layout, this, sheet, sheets).paint();
        new ReadingColumn(paper, layout, kind).paint();
    }

    MapLayout layout() {
        return layout;
    }
}
