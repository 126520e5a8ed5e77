package corewright.drawing.plates;

import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PrintRule;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.placing.MapLayout;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.SheetMarks;
import corewright.survey.Heading;
import corewright.survey.Readings;
import java.util.ArrayList;
import java.util.List;

/** What stands round the map of a plate: title, title strip (data fields of ISO 7200 in one line), caution, print check. */
final class PlateFrame {
    private static final double LEFT = LyingSheet.LEFT;
    private static final double STRIP = 174;
    private static final double STRIP_END = 187;
    private static final double PAD = 1.4;
    private static final Type TITLE = new Type(Typeface.TEXT_BOLD, 13);
    private static final Type SIDE = new Type(Typeface.TEXT, 8);
    private static final Type FIELD = new Type(Typeface.CONDENSED, 6.5);
    private static final Type VALUE = new Type(Typeface.CONDENSED_SEMIBOLD, 8);
    private static final double LEAST_VALUE_POINTS = 6.5;

    /** For names longer than three lines of the strip. */
    private static final double LEAST_CROWDED_POINTS = 4;

    private static final double VALUE_ROOM = 9.4;

    private record Field(String name, String value) {}

    private final Paper paper;
    private final MapLayout layout;
    private final MapSpec spec;
    private final PlateKind kind;
    private final String title;
    private final LyingSheet lying;
    private final double right;
    private final String subject;
    private final int sheet;
    private final int sheets;

    PlateFrame(Paper paper, MapLayout layout, PlateKind kind, String subject, int sheet, int sheets) {
        this.paper = paper;
        this.layout = layout;
        this.spec = layout.spec();
        this.lying = LyingSheet.of(spec.assessment().survey());
        this.right = lying.rightMm();
        this.kind = kind;
        this.subject = subject;
        this.title = title(spec, subject);
        this.sheet = sheet;
        this.sheets = sheets;
    }

    /** Vessel, face, subject. */
    static String title(MapSpec spec, String subject) {
        return vessel(spec) + " · " + spec.face() + " · " + subject;
    }

    void paint() {
        title();
        strip();
        caution();
        PrintRule.paint(paper, LEFT, 202, spec.measure());
        if (layout.sheetMarks().isEmpty()) {
            SheetMarks.at(spec, layout.view(), 191, 205).forEach(m -> m.paint(paper));
        }
    }

    /** The vessel's short name: the survey's vessel up to its first comma, else the survey's name. */
    static String vessel(MapSpec spec) {
        Heading heading = spec.assessment().survey().heading();
        String vessel = heading.vessel().isBlank() ? heading.name() : heading.vessel();
        int comma = vessel.indexOf(',');
        return heading.vessel().isBlank() || comma < 0 ? vessel : vessel.substring(0, comma);
    }

    private void title() {
        String side = Orientation.of(spec.damage().face());
        double room = right - LEFT - SIDE.width(side) - 8;
        Type type = TITLE.at(9).width(title) <= room
                ? TITLE.within(title, room, 1)
                : TITLE.at(9).within(title, room, 3);
        List<String> lines = type.wrap(title, room);
        paper.part(Part.TITLE, p -> {
            for (int i = 0; i < lines.size(); i++) {
                double up = (lines.size() - 1 - i) * type.leadMm() * 0.9;
                p.text(lines.get(i), LEFT, 14 - up, type, Paper.Anchor.LEFT);
            }
        });
        paper.text(side, right, 14, SIDE, Paper.Anchor.RIGHT);
        paper.line(Pen.EDGE, LEFT, 17, right, 17);
    }

    private List<Field> fields() {
        Heading heading = spec.assessment().survey().heading();
        List<Field> fields = new ArrayList<>();
        add(fields, "vessel", heading.vessel());
        add(fields, "survey", heading.name());
        add(fields, "drawing", capital(spec.face()) + ", " + subject);
        add(fields, "surveyed", Figures.date(heading.surveyed()));
        add(fields, "surveyor", heading.surveyor());
        add(fields, "readings", readings());
        add(fields, "scale", "1 : " + Figures.atMost(layout.view().scale(), 0) + " on " + lying.word());
        add(fields, "sheet", sheet + " of " + sheets);
        return fields;
    }

    private static void add(List<Field> fields, String name, String value) {
        if (!value.isBlank()) {
            fields.add(new Field(name, value));
        }
    }

    private static String capital(String word) {
        return word.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private String readings() {
        Readings on = spec.assessment().survey().readings().on(spec.face());
        List<String> kinds = new ArrayList<>();
        if (kind == PlateKind.FILL_CHECK) {
            count(kinds, on.curedTaps().size(), "taps after cure");
            count(kinds, on.temperatures().size(), "warmth");
            return String.join(", ", kinds);
        }
        count(kinds, on.moisture().size(), "moisture");
        count(kinds, on.taps().size(), "tap");
        count(kinds, on.probes().size(), "probe");
        count(kinds, on.feelers().size(), "feeler");
        count(kinds, on.plugs().size(), "plug");
        return kinds.isEmpty() ? "none" : String.join(", ", kinds);
    }

    private static void count(List<String> kinds, int n, String kind) {
        if (n > 0) {
            kinds.add(n + " " + kind);
        }
    }

    /**
     * Fields as wide as their words, what is left over shared evenly; smaller type where they are too wide together, then
     * the widest take more lines.
     */
    private void strip() {
        paper.line(Pen.EDGE, LEFT, STRIP, right, STRIP);
        paper.line(Pen.EDGE, LEFT, STRIP_END, right, STRIP_END);
        List<Field> fields = fields();
        double room = right - LEFT;
        Type type = VALUE;
        while (wanted(fields, type, room) > room && type.points() > LEAST_VALUE_POINTS) {
            type = type.at(type.points() - 0.25);
        }
        double most = widest(fields, type, room);
        double spare = Math.max(0, (room - wanted(fields, type, most)) / fields.size());
        double x = LEFT;
        for (Field field : fields) {
            if (x > LEFT) {
                paper.line(Pen.FAINT, x - PAD, STRIP + 2, x - PAD, STRIP + 11);
            }
            double width = Math.min(width(field, type), most);
            paper.text(field.name, x, STRIP + 3.4, FIELD, Paper.Anchor.LEFT, Tone.QUIET);
            value(field.value, x, width + 1e-6, type);
            x += width + 2 * PAD + spare;
        }
    }

    private void value(String value, double x, double width, Type type) {
        Type fits = type;
        while (fits.points() > LEAST_CROWDED_POINTS && fits.wrap(value, width).size() * fits.leadMm() > VALUE_ROOM) {
            fits = fits.at(fits.points() - 0.25);
        }
        List<String> lines = fits.wrap(value, width);
        double lead = fits.leadMm() * 0.9;
        double y = lines.size() == 1 ? STRIP + 9.4 : STRIP + 3.4 + lead;
        for (String line : lines) {
            paper.text(line, x, y, fits, Paper.Anchor.LEFT);
            y += lead;
        }
    }

    private static double width(Field field, Type type) {
        return Math.max(type.width(field.value), FIELD.width(field.name));
    }

    private static double wanted(List<Field> fields, Type type, double most) {
        return fields.stream()
                .mapToDouble(f -> Math.min(width(f, type), most) + 2 * PAD)
                .sum();
    }

    /** The width at which the longest fields go on to a further line so that all fit. */
    private static double widest(List<Field> fields, Type type, double room) {
        double most = room;
        while (wanted(fields, type, most) > room) {
            most -= 0.5;
        }
        return most;
    }

    private void caution() {
        String words =
                switch (kind) {
                    case CONDITION ->
                        "An estimate from readings, not a view through the skin. Before anything is cut or loaded, have the"
                                + " structure judged by a naval architect or surveyor.";
                    case REPAIR ->
                        "Never drill past the depth stop. Before anything is cut, filled or loaded, have the structure"
                                + " judged by a naval architect or surveyor; local rules come first.";
                    case FILL_CHECK ->
                        "Never drill past the depth stop. What was not tapped is not proven; whether a fill carries load is"
                                + " for a naval architect or surveyor.";
                };
        paper.text(words, LEFT, 191.8, Type.NOTE, Paper.Anchor.LEFT);
    }
}
