package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Tone;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.report.page.Flow;
import corewright.report.page.PageFrame;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import corewright.report.page.Wording;
import corewright.survey.Face;
import corewright.survey.Heading;
import corewright.survey.Meter;
import corewright.survey.Moisture;
import corewright.survey.Plug;
import corewright.survey.Readings;
import corewright.survey.Sound;
import corewright.survey.Survey;
import corewright.survey.Tap;
import corewright.survey.settings.Thresholds;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Who, when, with what: the visit, the instruments, the method. */
final class RecordFacts {
    private static final Type NAME = new Type(Typeface.TEXT, 7.5);
    private static final Prose VALUE = new Prose(9, 4.1);
    private static final int COLUMNS = 3;
    private static final double ROW_GAP = 1.6;

    private final Survey survey;
    private final Measure measure;

    RecordFacts(Assessment assessment) {
        survey = assessment.survey();
        measure = Measure.of(survey);
    }

    private record Fact(String name, String value) {}

    void visit(Flow flow) {
        Heading h = survey.heading();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("boat", h.vessel().isBlank() ? h.name() : h.vessel()));
        facts.add(new Fact("client", h.client()));
        facts.add(new Fact("survey", h.name()));
        facts.add(new Fact("surveyed", Figures.date(h.surveyed())));
        facts.add(new Fact("surveyor", h.surveyor()));
        facts.add(new Fact("weather", h.weather()));
        facts.add(new Fact("days ashore", h.daysAshore() == null ? "" : String.valueOf(h.daysAshore())));
        for (Face face : survey.faces()) {
            facts.add(new Fact(
                    face.name(),
                    measure.area(face.outline().getArea()) + ", tilt " + Figures.atMost(face.tiltDeg(), 1) + "°"));
        }
        double width = PageFrame.ANSWER_WIDTH / COLUMNS;
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < facts.size(); i += COLUMNS) {
            double height = 0;
            for (Fact fact : facts.subList(i, Math.min(facts.size(), i + COLUMNS))) {
                height = Math.max(height, NAME.leadMm() + VALUE.height(said(fact), width - 3));
            }
            heights.add(height + ROW_GAP);
        }
        double all = 2.4 + heights.stream().mapToDouble(Double::doubleValue).sum();
        flow.block(all, (paper, top) -> {
            PageFrame.hairline(paper, top);
            PageFrame.question(paper, "Visit", top + 2);
            double y = top + 2;
            for (int i = 0; i < facts.size(); i++) {
                double x = PageFrame.ANSWERS + (i % COLUMNS) * width;
                fact(paper, facts.get(i), x, y, width - 3);
                y += i % COLUMNS == COLUMNS - 1 ? heights.get(i / COLUMNS) : 0;
            }
        });
        flow.answer("Notes", Prose.plain(h.notes()));
    }

    private static String said(Fact fact) {
        String plain = Prose.plain(fact.value);
        return plain.isEmpty() ? "not stated" : Prose.bold(plain);
    }

    private static void fact(Paper paper, Fact fact, double x, double y, double width) {
        paper.text(Prose.plain(fact.name), x, y + NAME.capMm() + 0.8, NAME, Anchor.LEFT, Tone.QUIET);
        VALUE.paint(paper, said(fact), x, y + NAME.leadMm() - 0.4, width, Anchor.LEFT);
    }

    void instruments(Flow flow) {
        RuledTable table = new RuledTable(List.of(
                new Column("Instrument", 92, Anchor.LEFT),
                new Column("Dry", 27, Anchor.RIGHT),
                new Column("Wet from", 27, Anchor.RIGHT),
                new Column("Readings", 28, Anchor.RIGHT)));
        Readings r = survey.readings();
        for (Meter meter : survey.meters()) {
            List<Moisture> own = r.moisture().stream()
                    .filter(m -> m.meter().equals(meter.name()))
                    .toList();
            long reference = own.stream().filter(Moisture::reference).count();
            boolean pin = meter.kind() == Meter.Kind.PIN;
            table.row(List.of(
                    "meter " + Prose.plain(meter.name())
                            + (pin ? ", pins, wood moisture to " : ", relative scale, 0 to ")
                            + Figures.atMost(meter.fullScale(), 1) + (pin ? " %" : "")
                            + (reference > 0
                                    ? "; " + Wording.count((int) reference, "reading") + " over core known to be dry"
                                    : ""),
                    stated(meter.dry()),
                    stated(meter.wet()),
                    count(own.size())));
        }
        long heard = r.taps().stream().filter(t -> t.sound() != null).count();
        long timed = r.taps().size() - heard;
        if (heard > 0) {
            table.row(List.of("hammer, by ear: " + sounds(r), "–", "–", count(heard)));
        }
        if (timed > 0) {
            table.row(List.of("hammer with a sensor, contact time", "–", "–", count(timed)));
        }
        if (!r.probes().isEmpty()) {
            table.row(List.of(
                    "pilot holes: depth of the empty space, core found",
                    "–",
                    "–",
                    count(r.probes().size())));
        }
        if (!r.feelers().isEmpty()) {
            table.row(List.of(
                    "feelers pushed in under the skin",
                    "–",
                    "–",
                    count(r.feelers().size())));
        }
        if (!r.plugs().isEmpty()) {
            Thresholds t = survey.settings().thresholds();
            table.row(List.of(
                    "core plugs, oven-dried: " + plugs(r.plugs()) + " of dry mass",
                    "to " + Figures.atMost(t.dryPlugPercent(), 1) + " %",
                    Figures.atMost(t.wetPlugPercent(), 1) + " %",
                    count(r.plugs().size())));
        }
        flow.table("Instruments", table);
    }

    private static String count(long number) {
        return Figures.fixed(number, 0);
    }

    private static String stated(@Nullable Double value) {
        return value == null ? "not stated" : Figures.atMost(value, 1);
    }

    private static String sounds(Readings r) {
        List<String> words = new ArrayList<>();
        for (Sound sound : Sound.values()) {
            long n = r.taps().stream().filter(t -> t.sound() == sound).count();
            words.add(count(n) + " " + sound.name().toLowerCase(Locale.ROOT));
        }
        return String.join(", ", words);
    }

    private static String plugs(List<Plug> plugs) {
        double low = plugs.stream().mapToDouble(Plug::moisturePercent).min().orElse(0);
        double high = plugs.stream().mapToDouble(Plug::moisturePercent).max().orElse(0);
        String from = Figures.atMost(low, 1);
        String to = Figures.atMost(high, 1);
        return from.equals(to) ? from + " %" : from + " to " + to + " %";
    }

    void method(Flow flow) {
        Readings r = survey.readings();
        Thresholds t = survey.settings().thresholds();
        List<String> words = new ArrayList<>();
        for (Face face : survey.faces()) {
            Readings own = r.on(face.name());
            String name = survey.faces().size() == 1 ? "" : Wording.sentence(Prose.plain(face.name())) + ": ";
            words.add(name + kind("meter", "places read with the ", spacing(face, spots(own.moisture()))) + "; "
                    + kind("hammer", "places tapped with the ", spacing(face, taps(own.taps()))) + ".");
        }
        words.add(
                "Between readings the extent is estimated from how alike readings are at a distance (kriging of a hidden field, with"
                        + " simulation for areas and volumes). Likely: damage is more probable than "
                        + Figures.atMost(100 * t.likely(), 0) + " in 100. Possible: at least "
                        + Figures.atMost(100 * t.possible(), 0)
                        + " in 100. An index of moisture of 0 is the meter's dry reading, 100 the reading from which core counts as wet; it is"
                        + " never a percentage of water. Where the core was seen, what was seen counts.");
        flow.answer("Method", measure.say(String.join(" ", words)));
    }

    private static long spots(List<Moisture> readings) {
        return readings.stream().map(Moisture::spot).distinct().count();
    }

    private static long taps(List<Tap> readings) {
        return readings.stream().map(Tap::spot).distinct().count();
    }

    private static String kind(String tool, String words, String places) {
        return places.isEmpty() ? "not read with the " + tool : places.replace("#", words + tool);
    }

    /** {@code 115 #, one to a square of 240 mm}; empty where there is none. */
    private static String spacing(Face face, long places) {
        if (places == 0) {
            return "";
        }
        double side = Math.sqrt(face.outline().getArea() / places);
        return count(places) + " #, one to a square of " + Figures.fixed(10 * Math.round(side / 10), 0) + " mm";
    }
}
