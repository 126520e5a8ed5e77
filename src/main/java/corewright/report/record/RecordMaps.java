package corewright.report.record;

import corewright.assessment.Assessment;
import corewright.damage.Condition;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Region;
import corewright.drawing.kit.Box;
import corewright.drawing.kit.Figures;
import corewright.drawing.kit.LyingSheet;
import corewright.drawing.kit.Measure;
import corewright.drawing.kit.Orientation;
import corewright.drawing.kit.Paper;
import corewright.drawing.kit.Paper.Anchor;
import corewright.drawing.kit.Parts.Part;
import corewright.drawing.kit.Pen;
import corewright.drawing.kit.PrintRule;
import corewright.drawing.kit.Type;
import corewright.drawing.kit.Typeface;
import corewright.drawing.placing.Layer;
import corewright.drawing.placing.MapSpec;
import corewright.drawing.placing.MapWording;
import corewright.drawing.plates.MapPainter;
import corewright.report.page.Prose;
import corewright.report.page.Titles;
import corewright.survey.Readings;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** A face with its meter readings alone, and with its taps alone, each as large as a lying sheet takes it. */
final class RecordMaps {
    private static final Set<Layer> LAYERS =
            Set.of(Layer.READINGS, Layer.VOICE_GRID, Layer.FEATURE_NAMES, Layer.DATUM, Layer.SCALE_AND_UPHILL);
    private static final Type TITLE = new Type(Typeface.TEXT_BOLD, 14);
    private static final Prose WORDS = new Prose(9, 4.1);

    private RecordMaps() {}

    /** Meter readings over the extents of wet core. */
    static void moisture(Paper paper, Assessment assessment, String face) {
        Readings r = assessment.survey().readings();
        Readings only = new Readings(r.moisture(), List.of(), List.of(), List.of(), List.of(), List.of());
        paint(
                paper,
                with(assessment, only, Region::wet),
                face,
                "Moisture",
                "Each number is a meter reading as taken. Patterns: where the core is more probably wet than not.");
    }

    /** Taps over the extents of loose skin. */
    static void taps(Paper paper, Assessment assessment, String face) {
        Readings r = assessment.survey().readings();
        Readings only = new Readings(List.of(), r.taps(), List.of(), List.of(), List.of(), List.of());
        paint(
                paper,
                with(assessment, only, region -> region.condition() != Condition.WET),
                face,
                "Taps",
                "A dot is a tap that rang sound; one line under it dull, two hollow. Patterns: where the skin is more probably loose than"
                        + " not.");
    }

    private static Assessment with(Assessment a, Readings only, Predicate<Region> shown) {
        List<FaceDamage> faces =
                a.damage().faces().stream().map(f -> only(f, shown)).toList();
        DamageMap map = new DamageMap(faces, a.damage().voidMm3(), a.damage().damagedMm2());
        return new Assessment(
                a.survey().with(only),
                map,
                a.stiffness(),
                a.plans(),
                a.gains(),
                a.decision(),
                a.work(),
                a.findings(),
                a.next(),
                a.ages());
    }

    private static FaceDamage only(FaceDamage f, Predicate<Region> shown) {
        return new FaceDamage(
                f.face(),
                f.bays(),
                f.surfaces(),
                f.regions().stream().filter(shown).toList(),
                f.sound(),
                f.undecided(),
                f.damagedMm2(),
                f.voidMm3(),
                f.next(),
                f.findings(),
                f.notes());
    }

    private static void paint(Paper paper, Assessment shown, String face, String what, String words) {
        String title = Titles.boat(shown.survey().heading()) + " · " + Prose.plain(face) + " · " + what;
        LyingSheet sheet = LyingSheet.of(shown.survey());
        double left = LyingSheet.LEFT;
        double width = sheet.rightMm() - left;
        paper.part(Part.TITLE, p -> p.text(title, left, 17, TITLE.within(title, width, 1), Anchor.LEFT));
        paper.line(Pen.EDGE, left, 20, left + width, 20);
        Box map = new Box(left, 30, width, 162);
        MapPainter.Painted painted =
                MapPainter.paint(paper, new MapSpec(shown, face, map, MapSpec.LARGEST, LAYERS, MapWording.TRADE));
        int hidden = painted.readingsTotal() - painted.readingsShown();
        String thinned = hidden == 0
                ? " All " + painted.readingsTotal() + " are shown."
                : " " + painted.readingsShown() + " of " + painted.readingsTotal()
                        + " are shown, as many as stand clear of each other; the survey's files have them all.";
        WORDS.paint(
                paper,
                words + thinned + " 1 : " + Figures.fixed(painted.scale(), 0) + " on " + sheet.word() + ", "
                        + Orientation.of(shown.survey().face(face)) + ".",
                left,
                21.5,
                width,
                Anchor.LEFT);
        PrintRule.paint(paper, left, 198, Measure.of(shown.survey()));
    }
}
