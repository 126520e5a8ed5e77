package corewright.desktop.slip;

import corewright.assessment.Assessment;
import corewright.damage.NextReading;
import corewright.damage.Region;
import corewright.desktop.state.Units;
import corewright.drawing.kit.PlaceNames;
import corewright.survey.About;
import corewright.survey.Finding;
import corewright.survey.Spot;
import corewright.survey.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Findings as lines of the slip: several of one kind become one line that says how many. */
public final class FindingLines {
    private static final int NEXT_SHOWN = 2;
    private static final double MM3_PER_LITRE = 1e6;
    private static final double MM2_PER_M2 = 1e6;
    private static final GeometryFactory POINTS = new GeometryFactory();

    private record Kind(Finding.Severity severity, Subject subject) {}

    private FindingLines() {}

    /** Of a face; also those that belong to no face. */
    static List<Slip.FindingLine> of(Assessment found, String face, Units units) {
        List<Finding> own = found.findings().stream()
                .filter(f -> f.about().face().isEmpty() || f.about().face().equals(face))
                .toList();
        List<Slip.FindingLine> lines = new ArrayList<>(grouped(own));
        PlaceNames names = PlaceNames.of(found.survey().face(face));
        found.next().stream()
                .filter(n -> n.spot().face().equals(face))
                .limit(NEXT_SHOWN)
                .forEach(n -> lines.add(next(n, names, units)));
        return lines;
    }

    /** In or of one region. */
    static List<Slip.FindingLine> of(Assessment found, Region region) {
        List<Finding> own = found.findings().stream()
                .filter(f -> regionOf(f).equals(region.id()) || inside(f.about().spot(), region))
                .toList();
        return grouped(own);
    }

    /** The id of the region that a finding is about, empty where it is about anything else. */
    private static String regionOf(Finding f) {
        return f.about() instanceof About.OfRegion region ? region.id() : "";
    }

    private static boolean inside(@Nullable Spot spot, Region region) {
        return spot != null
                && spot.face().equals(region.face())
                && region.likely().covers(POINTS.createPoint(spot.coordinate()));
    }

    private static List<Slip.FindingLine> grouped(List<Finding> findings) {
        Map<Kind, List<Finding>> kinds = new LinkedHashMap<>();
        for (Finding f : findings) {
            kinds.computeIfAbsent(new Kind(f.severity(), f.subject()), k -> new ArrayList<>())
                    .add(f);
        }
        List<Slip.FindingLine> lines = new ArrayList<>();
        kinds.forEach((kind, same) -> {
            int things = (int) same.stream().map(Finding::about).distinct().count();
            if (things < 3 || kind.severity() == Finding.Severity.HAZARD) {
                same.forEach(f -> lines.add(line(f, sentence(f.message()), sentence(f.effect()))));
            } else {
                lines.add(line(
                        same.get(0),
                        many(kind.subject(), things),
                        sentence(same.get(0).effect())));
            }
        });
        return lines;
    }

    private static String many(Subject subject, int n) {
        return switch (subject) {
            case METAL -> n + " raised readings stand beside metal: they may be falsely high.";
            case CONTRADICTION -> n + " readings contradict their neighbours.";
            case OUTSIDE -> n + " readings lie outside the outline.";
            case IN_AN_OPENING -> n + " readings lie in openings.";
            case OFF_THE_CORE -> n + " readings lie off the core.";
            case REPEATED_ID,
                    VOID_DEPTH,
                    OFF_SCALE,
                    EARLIER_READING,
                    TAP_FROM_BELOW,
                    TRUSTED,
                    SET_ASIDE,
                    JUDGEMENT_OF_NOTHING,
                    NO_READING,
                    NO_MOISTURE,
                    NO_TAPS,
                    NO_PROBES,
                    FEW_READINGS,
                    ALL_EQUAL,
                    NUMERICS,
                    UPHILL,
                    SIDE,
                    PLAN,
                    DRAWING,
                    DIVIDER,
                    SUPPORT,
                    PANEL,
                    PANEL_LEFT_OUT,
                    LAMINATE,
                    LOAD,
                    DRY_CORE,
                    METHOD_BY_HAND,
                    RULE_BY_HAND,
                    COVERAGE,
                    WORK_LOG,
                    REPAIR_PLAN,
                    FILL_CHECK,
                    DEFECT,
                    PLAUSIBILITY,
                    COVERAGE_OF_READINGS,
                    UNREAD_COLUMN,
                    METER,
                    METER_SCALE,
                    MATERIAL,
                    RESIN,
                    NAME,
                    PICTURE,
                    UNKNOWN_KEY,
                    UNUSED_COLUMNS,
                    CONTROL_CHARACTERS,
                    UNREAD_FILE -> n + " findings: " + subject.word() + ".";
        };
    }

    private static Slip.FindingLine line(Finding f, String fact, String consequence) {
        return new Slip.FindingLine(f.severity(), fact, consequence, f.about().spot(), regionOf(f));
    }

    private static Slip.FindingLine next(NextReading n, PlaceNames names, Units units) {
        String deed =
                switch (n.kind()) {
                    case MOISTURE -> "Read place " + n.rank() + " next";
                    case TAP -> "Tap place " + n.rank() + " next";
                    case PROBE -> "Probe place " + n.rank() + ", with the owner's consent";
                };
        List<String> gains = new ArrayList<>();
        if (n.decisions() > 0) {
            gains.add(
                    "it changes what is advised in " + Math.round(100 * Math.min(1, n.decisions())) + " of 100 cases");
        }
        if (n.gain() > 0) {
            gains.add("it settles "
                    + (n.unit() == NextReading.Unit.LITRE
                            ? units.dash(n.gain() * MM3_PER_LITRE)
                            : units.patch(n.gain() * MM2_PER_M2))
                    + " of doubt");
        }
        String gain = String.join("; ", gains) + ".";
        String place = names.at(n.spot().xMm(), n.spot().yMm());
        return new Slip.FindingLine(Finding.Severity.HINT, deed + " (" + place + "):", gain, n.spot(), "");
    }

    /** With a capital and a full stop. */
    static String sentence(String text) {
        if (text.isEmpty()) {
            return text;
        }
        String end = text.endsWith(".") || text.endsWith(":") ? "" : ".";
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + end;
    }

    /** The region a finding or a place belongs to. */
    public static Optional<Region> regionAt(Assessment found, String face, double xMm, double yMm) {
        Coordinate at = new Coordinate(xMm, yMm);
        return found.damage().face(face).regions().stream()
                .filter(r -> r.likely().getEnvelopeInternal().contains(at)
                        && r.likely().covers(POINTS.createPoint(at)))
                .findFirst();
    }
}
