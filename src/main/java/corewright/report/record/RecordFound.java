package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.Coverage;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Region;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.PlaceNames;
import corewright.report.page.Flow;
import corewright.report.page.Prose;
import corewright.report.page.RuledTable;
import corewright.report.page.RuledTable.Column;
import corewright.report.page.Wording;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Moisture;
import corewright.survey.Readings;
import corewright.survey.Sound;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** What was found: regions with their extents and what they rest on, what was not read, what is doubted and why. */
final class RecordFound {
    /** More rows than this are for the file. */
    private static final int MOST_FINDINGS = 120;

    /** So many readings of one kind of finding stand together; so many of them by name. */
    private static final int MANY = 4;

    private static final int MOST_NAMED = 80;

    private final Assessment assessment;
    private final Measure measure;

    RecordFound(Assessment assessment) {
        this.assessment = assessment;
        measure = Measure.of(assessment.survey());
    }

    /** The finding, as one sentence. */
    String title() {
        if (assessment.verdict().withheld()) {
            return assessment.verdict().sentence();
        }
        double deck = assessment.damage().faces().stream()
                .mapToDouble(FaceDamage::deckMm2)
                .sum();
        double damaged = assessment.damage().regions().stream()
                .mapToDouble(r -> r.likely().getArea())
                .sum();
        String unread = assessment.verdict().sentence();
        if (damaged == 0) {
            return unread.isEmpty() ? "No damage was found in " + measure.area(deck) + " of core." : unread;
        }
        return measure.areaFigure(damaged) + " of " + measure.area(deck) + " of core is more probably damaged than not."
                + (unread.isEmpty() ? "" : " " + unread);
    }

    void regions(Flow flow) {
        if (assessment.damage().regions().isEmpty()) {
            flow.answer("Regions", "None is told.");
            return;
        }
        RuledTable table = new RuledTable(List.of(
                new Column("No.", 11, Anchor.LEFT),
                new Column("Condition", 31, Anchor.LEFT),
                new Column("Place", 43, Anchor.LEFT),
                new Column("Likely, " + measure.areaUnit(), 20, Anchor.RIGHT),
                new Column("Possible", 22, Anchor.RIGHT),
                new Column("Rests on", 47, Anchor.LEFT)));
        double likely = 0;
        for (FaceDamage face : assessment.damage().faces()) {
            for (Region region : face.regions()) {
                likely += region.likely().getArea();
                table.row(List.of(
                        Prose.bold(region.id()),
                        region.condition().name().toLowerCase(Locale.ROOT).replace('_', '-') + depth(region),
                        Prose.plain(region.face()) + " "
                                + PlaceNames.of(face.face()).over(region.likely()),
                        measure.areaFigure(region.likely().getArea()),
                        measure.areaFigure(region.possible().getArea()),
                        basis(region)));
            }
        }
        Quantiles damaged = assessment.damage().damagedMm2();
        table.row(List.of(
                "",
                "together",
                "in 8 cases of 10 " + measure.areaFigure(damaged.p10()) + " to " + measure.areaFigure(damaged.p90())
                        + " " + measure.areaUnit(),
                Prose.bold(measure.areaFigure(likely)),
                "",
                "possible extents may overlap and are not added; the range counts doubtful places too"));
        flow.table("Regions", table);
        Quantiles empty = assessment.damage().voidMm3();
        if (empty.p90() > 0 && assessment.survey().readings().coreSeen()) {
            flow.answer(
                    "Empty space",
                    "Most likely " + measure.volumeFigure(empty.p50()) + " " + measure.volumeUnit()
                            + " under all skins; in 8 cases of 10 between " + measure.volumeFigure(empty.p10())
                            + " and "
                            + measure.volumeFigure(empty.p90()) + ".");
        }
    }

    private String depth(Region region) {
        return region.condition() == Condition.VOID
                ? ", " + measure.depthFigure(region.meanVoidDepthMm()) + " " + measure.depthUnit() + " deep on the mean"
                : "";
    }

    /** Readings that lie in the likely extent. */
    private String basis(Region region) {
        PreparedGeometry area = PreparedGeometryFactory.prepare(region.likely());
        Readings r = assessment.survey().readings().on(region.face());
        List<String> words = new ArrayList<>();
        List<Moisture> read =
                r.moisture().stream().filter(m -> within(area, m.spot())).toList();
        Map<String, List<Moisture>> byMeter =
                read.stream().collect(Collectors.groupingBy(Moisture::meter, TreeMap::new, Collectors.toList()));
        byMeter.forEach((meter, own) -> {
            double low = own.stream().mapToDouble(Moisture::value).min().orElse(0);
            double high = own.stream().mapToDouble(Moisture::value).max().orElse(0);
            words.add(Wording.count(own.size(), "reading") + " of meter " + Prose.plain(meter) + ", "
                    + Figures.atMost(low, 1) + (low == high ? "" : " to " + Figures.atMost(high, 1)));
        });
        for (Sound sound : new Sound[] {Sound.SOUND, Sound.DULL, Sound.HOLLOW}) {
            int n = (int) r.taps().stream()
                    .filter(t -> t.sound() == sound && within(area, t.spot()))
                    .count();
            if (n > 0) {
                words.add(Wording.count(n) + " " + sound.name().toLowerCase(Locale.ROOT) + (n == 1 ? " tap" : " taps"));
            }
        }
        int probes =
                (int) r.probes().stream().filter(p -> within(area, p.spot())).count();
        int plugs = (int) r.plugs().stream().filter(p -> within(area, p.spot())).count();
        if (probes > 0) {
            words.add(Wording.count(probes, "pilot hole"));
        }
        if (plugs > 0) {
            words.add(Wording.count(plugs, "plug"));
        }
        return words.isEmpty() ? "readings round it; none within" : String.join("; ", words);
    }

    private static boolean within(PreparedGeometry area, Spot spot) {
        Geometry point = area.getGeometry().getFactory().createPoint(new Coordinate(spot.xMm(), spot.yMm()));
        return area.covers(point);
    }

    void unread(Flow flow) {
        List<String> words = new ArrayList<>();
        for (FaceDamage face : assessment.damage().faces()) {
            Coverage coverage = Coverage.of(assessment.survey(), face.face());
            words.add(String.format(
                    Locale.ROOT,
                    "%s: of its core %s; %s undecided.",
                    Wording.sentence(Prose.plain(face.face().name())),
                    coverage.shares(),
                    face.undecidedMm2() > 0 ? measure.area(face.undecidedMm2()) : "nothing"));
            face.undecided().stream()
                    .map(u -> Prose.plain(u.why()))
                    .distinct()
                    .limit(4)
                    .map(w -> Wording.sentence(w) + (w.endsWith(".") ? "" : "."))
                    .forEach(words::add);
        }
        flow.answer("Not read, not decided", measure.say(String.join(" ", words)));
    }

    void doubts(Flow flow) {
        long doubted = count(Subject.Standing.DOUBTED);
        long aside = count(Subject.Standing.SET_ASIDE);
        flow.answer(
                "Doubted",
                Wording.sentence(Wording.count((int) doubted, "reading"))
                        + " doubted: each counts for less than it shows, and stands in"
                        + " brackets on the maps. " + Wording.sentence(Wording.count((int) aside, "reading"))
                        + " set aside: struck through. Every one with its reason is in the table of findings.");
    }

    private long count(Subject.Standing standing) {
        return assessment.findings().stream()
                .filter(f -> f.subject().standing() == standing && f.about() instanceof About.OfReading)
                .map(Finding::about)
                .distinct()
                .count();
    }

    void findings(Flow flow) {
        List<Finding> all = assessment.findings();
        if (all.isEmpty()) {
            return;
        }
        RuledTable table = new RuledTable(List.of(
                new Column("", 16, Anchor.LEFT),
                new Column("Where", 31, Anchor.LEFT),
                new Column("What", 72, Anchor.LEFT),
                new Column("What it does", 55, Anchor.LEFT)));
        List<List<Finding>> rows = alike(all);
        rows.stream()
                .limit(MOST_FINDINGS)
                .forEach(like -> table.row(List.of(
                        like.get(0).severity().name().toLowerCase(Locale.ROOT),
                        Prose.plain(where(like)),
                        (like.size() == 1 ? "" : Prose.bold(Wording.count(like.size(), "reading") + ", the first: "))
                                + measure.say(Prose.plain(like.get(0).message())),
                        measure.say(Prose.plain(like.get(0).effect())))));
        int more = rows.stream().skip(MOST_FINDINGS).mapToInt(List::size).sum();
        if (more > 0) {
            table.row(List.of("", "", Figures.fixed(more, 0) + " more are in findings.csv.", ""));
        }
        flow.table("Findings", table);
    }

    /** Findings one by one; readings of which many are told the same stand together, where the first of them would. */
    private static List<List<Finding>> alike(List<Finding> all) {
        Map<List<Object>, List<Finding>> kinds = new LinkedHashMap<>();
        for (Finding f : all) {
            if (f.about() instanceof About.OfReading) {
                kinds.computeIfAbsent(kind(f), k -> new ArrayList<>()).add(f);
            }
        }
        List<List<Finding>> rows = new ArrayList<>();
        for (Finding f : all) {
            List<Finding> like =
                    f.about() instanceof About.OfReading ? kinds.getOrDefault(kind(f), List.of()) : List.of();
            if (like.size() < MANY) {
                rows.add(List.of(f));
            } else if (like.get(0) == f) {
                rows.add(like);
            }
        }
        return rows;
    }

    private static List<Object> kind(Finding f) {
        return List.of(f.severity(), f.subject(), f.about().face(), f.origin().file(), f.effect());
    }

    /** File and line of one; of many the file and who they are. */
    private static String where(List<Finding> like) {
        Finding first = like.get(0);
        if (like.size() == 1) {
            return first.origin()
                    + (first.about().id().isEmpty() ? "" : " " + first.about().id());
        }
        String named = like.stream().limit(MOST_NAMED).map(f -> f.about().id()).collect(Collectors.joining(", "));
        int rest = like.size() - MOST_NAMED;
        return first.origin().file() + ": " + named
                + (rest > 0 ? " and " + Figures.fixed(rest, 0) + " more in findings.csv" : "");
    }

    void limits(Flow flow) {
        flow.answer(
                "Limits",
                "A meter answers to water, salt and metal alike and proves nothing of its depth; a tap hears the outer skin and what lies"
                        + " under it. Neither sees the core. What lies under fittings, in solid edges and between readings was not"
                        + " read. The record holds for the day of the survey. It judges no strength: where load is carried a naval"
                        + " architect or surveyor decides.");
    }
}
