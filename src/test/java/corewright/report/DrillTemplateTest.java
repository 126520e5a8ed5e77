package corewright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import corewright.Assessments;
import corewright.assessment.Assessment;
import corewright.damage.Region;
import corewright.decision.Decision;
import corewright.decision.Method;
import corewright.decision.RegionDecision;
import corewright.decision.drying.DryingPattern;
import corewright.drawing.template.Leaf;
import corewright.repair.plan.Hole;
import corewright.repair.plan.RecorePlan;
import corewright.report.template.DrillTemplate;
import corewright.survey.Spot;
import corewright.survey.settings.Settings.Terms;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The template laid on the deck by what is printed on it alone: the heavy cross goes to the place that its words say, and every
 * hole must then lie where the plan has it, within 0.1 mm, the finest that {@code holes.csv} tells.
 */
@NullUnmarked // JUnit fills the folder
class DrillTemplateTest {
    private static final double TRUE_MM = 0.1;

    /** A PDF's own figures have at least four digits behind the point, in units of 0.35 mm. */
    private static final double BAR_MM = 0.01;

    private static final double RING = 20;
    private static final double CROSS = 24;
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final Pattern PLACE = Pattern.compile(
            "([0-9.]+) m (aft|forward), (?:([0-9.]+) m (to port|to starboard|up|down)|on the centreline)");

    @TempDir
    Path folder;

    /** A sheet as somebody finds it: what it draws, and where its cross says that it lies. */
    private record Sheet(Drawn drawn, String text, double crossX, double crossY, double aft, double across, int up) {
        double x(double paperX) {
            return aft + paperX - crossX;
        }

        double y(double paperY) {
            return across + up * (crossY - paperY);
        }

        /** Places of rings with a bit's circle in their middle. */
        List<Coordinate> holes(double bitMm) {
            List<Coordinate> holes = new ArrayList<>();
            for (Drawn.Circle ring : drawn.circles) {
                boolean bit = drawn.circles.stream()
                        .anyMatch(c -> Math.abs(c.diameter() - bitMm) < 0.01
                                && Math.hypot(c.x() - ring.x(), c.y() - ring.y()) < 0.01);
                if (Math.abs(ring.diameter() - RING) < 0.01 && bit) {
                    holes.add(new Coordinate(x(ring.x()), y(ring.y())));
                }
            }
            return holes;
        }

        /** The frame that is cut along, on the deck. */
        Envelope frame() {
            Rectangle2D frame = drawn.rectangles.stream()
                    .filter(r -> Math.abs(r.getX() - Leaf.LEFT) < 0.01 && r.getWidth() >= 168)
                    .findFirst()
                    .orElseThrow();
            return new Envelope(x(frame.getMinX()), x(frame.getMaxX()), y(frame.getMinY()), y(frame.getMaxY()));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "a4, 3, 180", "a3, 3, 180", "letter, 3, 180",
        "a4, 180, 0", "a3, 180, 0", "letter, 180, 0",
        "a4, 75, 90"
    })
    void everyHoleLiesWhereThePlanHasIt(String paper, double tilt, double uphill) throws IOException {
        Assessment a = deck(paper, tilt, uphill);
        Path tiles = folder.resolve("tiles.pdf");
        Path whole = folder.resolve("whole.pdf");
        DrillTemplate.tiles(a, tiles);
        DrillTemplate.sheets(a, whole);

        Terms.Sheet size = a.survey().settings().terms().paper();
        assertThat(size.name()).isEqualToIgnoringCase(paper);
        try (PDDocument pdf = Loader.loadPDF(tiles.toFile())) {
            for (PDPage page : pdf.getPages()) {
                assertThat(page.getMediaBox().getWidth() * 25.4 / 72).isCloseTo(size.widthMm(), within(BAR_MM));
                assertThat(page.getMediaBox().getHeight() * 25.4 / 72).isCloseTo(size.heightMm(), within(BAR_MM));
            }
        }
        lies(a, sheets(tiles), tilt);
        lies(a, sheets(whole), tilt);
        named(a, tiles);
    }

    private static void lies(Assessment a, List<Sheet> all, double tilt) {
        List<Sheet> sheets = all.stream()
                .filter(s -> !s.text.contains(" open to dry")) // see below
                .toList();
        List<Hole> planned = drilled(a);
        assertThat(planned).isNotEmpty();
        double bit = planned.get(0).diameterMm();
        List<Coordinate> found =
                sheets.stream().flatMap(s -> s.holes(bit).stream()).toList();
        for (Hole hole : planned) {
            assertThat(found).as(hole.id()).anyMatch(c -> c.distance(hole.spot().coordinate()) <= TRUE_MM);
        }
        assertThat(found).allMatch(c -> planned.stream()
                .anyMatch(h -> c.distance(h.spot().coordinate()) <= TRUE_MM));
        for (Sheet sheet : sheets) {
            assertThat(sheet.holes(bit)).as("a sheet without anything").isNotEmpty();
            assertThat(bars(sheet)).isEqualTo("level and upright");
            assertThat(sheet.text.contains("Mirrored, for work from below.")).isEqualTo(tilt == 180);
            assertThat(sheet.text).contains("Printed side towards you.", "1 : 1", "bow");
        }
    }

    private static String bars(Sheet sheet) {
        boolean level = false;
        boolean upright = false;
        for (Drawn.Line line : sheet.drawn.lines) {
            boolean bar = Math.abs(line.length() - 100) < BAR_MM;
            level |= bar && line.level();
            upright |= bar && line.upright();
        }
        return (level ? "level" : "") + (level && upright ? " and " : "") + (upright ? "upright" : "");
    }

    private static List<Hole> drilled(Assessment a) {
        return a.decision().injections().stream()
                .flatMap(p -> p.holes().stream())
                .filter(Hole::drilled)
                .toList();
    }

    /** The large word nearest to each ring is the hole's number on its card. */
    private static void named(Assessment a, Path file) throws IOException {
        List<Hole> holes = drilled(a);
        int told = 0;
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                Sheet sheet = sheet(pdf, page);
                for (Word word : largeWords(pdf, page)) {
                    Hole nearest = holes.stream()
                            .min(Comparator.comparingDouble(h -> Math.hypot(
                                    h.spot().xMm() - sheet.x(word.x), h.spot().yMm() - sheet.y(word.y))))
                            .orElseThrow();
                    assertThat(nearest.id()).endsWith("-" + word.text);
                    told++;
                }
            }
        }
        assertThat(told).isEqualTo(holes.size());
    }

    private record Word(String text, double x, double y) {}

    private static List<Word> largeWords(PDDocument pdf, int page) throws IOException {
        List<Word> words = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> at) {
                if (Math.abs(at.get(0).getXScale() - 22) < 0.1) {
                    words.add(new Word(
                            text.strip(),
                            at.get(0).getXDirAdj() * 25.4 / 72,
                            at.get(0).getYDirAdj() * 25.4 / 72));
                }
            }
        };
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        stripper.getText(pdf);
        return words;
    }

    private static List<Sheet> sheets(Path file) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                sheets.add(sheet(pdf, page));
            }
        }
        return sheets;
    }

    private static Sheet sheet(PDDocument pdf, int page) throws IOException {
        Drawn drawn = Drawn.of(pdf.getPage(page));
        String text = text(pdf, page);
        Matcher place = PLACE.matcher(text);
        assertThat(place.find()).as(text).isTrue();
        double aft = 1000 * Double.parseDouble(place.group(1)) * (place.group(2).equals("aft") ? 1 : -1);
        double across = 0;
        if (place.group(3) != null) {
            boolean plus =
                    place.group(4).equals("to starboard") || place.group(4).equals("up");
            across = 1000 * Double.parseDouble(place.group(3)) * (plus ? 1 : -1);
        }
        for (Drawn.Line level : drawn.lines) {
            for (Drawn.Line upright : drawn.lines) {
                boolean cross = level.level()
                        && upright.upright()
                        && Math.abs(level.length() - CROSS) < 0.01
                        && Math.abs(upright.length() - CROSS) < 0.01
                        && Math.hypot(level.middleX() - upright.middleX(), level.middleY() - upright.middleY()) < 0.01;
                if (cross) {
                    int up = text.contains("port at the top") ? -1 : 1;
                    return new Sheet(drawn, text, level.middleX(), level.middleY(), aft, across, up);
                }
            }
        }
        throw new AssertionError("no cross on sheet " + (page + 1));
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        return stripper.getText(pdf).replace('\u2009', ' ').replace('\u00a0', ' ');
    }

    private Assessment deck(String paper, double tilt, double uphill) throws IOException {
        return Printed.withoutPanels(Printed.intake(Printed.DECK, folder.resolve("deck"), yaml -> yaml.replace(
                        "temperature: C", "temperature: C, paper: " + paper)
                .replace("tilt_deg: 3, uphill_deg: 180", "tilt_deg: " + tilt + ", uphill_deg: " + uphill)));
    }

    /** Every place of a cut's line lies within the frame of a sheet. */
    @Test
    void aCutLiesOnItsSheets() throws IOException {
        Assessment sample = SampleAssessment.damaged();
        Geometry cut = SampleAssessment.polygon("POLYGON((1175 -285,1585 -285,1585 285,1400 300,1175 285,1175 -285))");
        Assessment a = cutting(sample, cut);
        Path file = folder.resolve("cut.pdf");
        DrillTemplate.tiles(a, file);

        List<Sheet> sheets =
                sheets(file).stream().filter(s -> s.text.contains("R2 cut out")).toList();
        Geometry left = cut.getBoundary();
        for (Sheet sheet : sheets) {
            Geometry frame = SHAPES.toGeometry(sheet.frame());
            assertThat(frame.intersects(cut.getBoundary())).isTrue();
            left = left.difference(frame.buffer(TRUE_MM));
            assertThat(sheet.text).contains("Before cutting", "A naval architect or surveyor decides");
        }
        assertThat(left.getLength()).isZero();
        // the middle tile of a cut of 410 by 585 mm holds nothing
        assertThat(sheets).hasSizeBetween(6, 12);
    }

    /** Every hole that a region dries through is on a sheet, where its card counts it. */
    @Test
    void theHolesOfWhatDriesLieWhereTheCardHasThem() throws IOException {
        Assessment sample = SampleAssessment.damaged();
        Region region = sample.damage().regions().get(0);
        Assessment a = drying(sample, region);
        Path file = folder.resolve("dry.pdf");
        DrillTemplate.tiles(a, file);

        List<Sheet> sheets = sheets(file).stream()
                .filter(s -> s.text.contains(region.id() + " open to dry"))
                .toList();
        double bit = a.survey().settings().drilling().holeDiameterMm();
        List<Spot> planned = DryingPattern.of(a.survey(), region).holes();
        assertThat(planned).hasSizeGreaterThan(4);
        for (Spot hole : planned) {
            assertThat(sheets).anyMatch(s -> s.drawn.circles.stream()
                    .filter(c -> Math.abs(c.diameter() - bit) < 0.01)
                    .anyMatch(c -> hole.coordinate().distance(new Coordinate(s.x(c.x()), s.y(c.y()))) <= TRUE_MM));
        }
        assertThat(sheets.get(0).text).contains("at each cross, " + planned.size() + " in all");
    }

    private static Assessment drying(Assessment a, Region region) {
        RegionDecision dry = new RegionDecision(region.id(), Method.DRY_OUT, List.of("by hand"), null, Map.of(), false);
        Decision d = a.decision();
        List<RegionDecision> all = d.regions().stream()
                .map(r -> r.region().equals(region.id()) ? dry : r)
                .toList();
        return with(a, new Decision(all, List.of(), List.of(), d.choices(), d.buying(), d.findings()));
    }

    private static Assessment cutting(Assessment a, Geometry cut) {
        Decision d = a.decision();
        RecorePlan plan = new RecorePlan("R2", cut, 12.5, "balsa-150", 900, List.of());
        return with(a, new Decision(d.regions(), List.of(), List.of(plan), d.choices(), d.buying(), d.findings()));
    }

    private static Assessment with(Assessment a, Decision decision) {
        return Assessments.of(a.survey(), a.damage(), a.stiffness(), a.plans(), decision, a.findings(), a.next());
    }

    @Test
    void whereNothingIsDrilledOnePageSaysSo() throws IOException {
        Path file = folder.resolve("none.pdf");
        for (boolean tiles : new boolean[] {true, false}) {
            if (tiles) {
                DrillTemplate.tiles(SampleAssessment.sound(), file);
            } else {
                DrillTemplate.sheets(SampleAssessment.sound(), file);
            }
            try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                assertThat(pdf.getNumberOfPages()).isEqualTo(1);
                assertThat(text(pdf, 0)).contains("Nothing to drill or cut");
            }
        }
    }
}
