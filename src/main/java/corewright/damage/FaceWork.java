package corewright.damage;

import corewright.contour.Raster;
import corewright.survey.About;
import corewright.survey.Face;
import corewright.survey.Feature;
import corewright.survey.Finding;
import corewright.survey.Origin;
import corewright.survey.Reading;
import corewright.survey.Readings;
import corewright.survey.Spot;
import corewright.survey.Survey;
import corewright.survey.settings.Settings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;

/** One face from its readings to its regions; numbered by {@link Damage} when all faces are done. */
final class FaceWork {
    /** More readings off the core than this are counted, not listed. */
    private static final int ONE_BY_ONE = 10;

    private final Survey survey;
    private final Face face;
    private final Settings settings;
    private final Plan plan;
    private final Frame frame;
    private final Coverage coverage;
    private final List<Finding> findings = new ArrayList<>();
    private final List<BayWork> works = new ArrayList<>();
    private final List<BayFields> bays = new ArrayList<>();
    private final List<VoidDraws> draws = new ArrayList<>();
    private final List<Polygon> sound = new ArrayList<>();
    private final double[] voidMm3;
    private final double[] damagedMm2;
    private final List<RegionDraft> drafts = new ArrayList<>();
    private final List<NextReading> next;

    FaceWork(Judged judged, Face face, Map<String, MeterScale> scales, TapScale tapScale, Bays way) {
        survey = judged.survey();
        this.face = face;
        settings = survey.settings();
        plan = Plan.of(survey, face);
        frame = Frame.over(face.outline(), settings.numerics().cellMm());
        voidMm3 = new double[settings.numerics().realisations()];
        damagedMm2 = new double[voidMm3.length];
        findings.addAll(plan.findings());
        findings.addAll(judged.findings(face.name()));
        Readings readings = survey.readings().on(face.name());
        findings.addAll(MeterScale.findings(scales, readings.moisture()));
        coverage = Coverage.of(survey, face);
        findings.addAll(coverage.findings());
        setAside(readings);
        sound.addAll(plan.solids());
        for (Bay bay : plan.bays()) {
            Readings own = in(bay, readings);
            var seen = new BayInput.Seen(
                    judged.heard(WetEvidence.of(face, own, settings.thresholds(), scales, judged, findings)),
                    judged.heard(inside(bay, LooseEvidence.of(own, tapScale, findings))),
                    judged.heard(inside(bay, VoidEvidence.of(survey, own, tapScale))));
            add(way.work(BayInput.of(survey, face, bay, seen), frame, coreOfCell()));
        }
        findings.addAll(FieldDoubts.of(face, settings, bays, judged));
        next = way.next(face.name(), works, () -> NextReadings.of(face, frame, bays, draws, settings.thresholds()));
    }

    private void add(BayWork work) {
        for (int d = 0; d < voidMm3.length; d++) {
            voidMm3[d] += work.totalMm3().get(d);
            damagedMm2[d] += work.damagedMm2().get(d);
        }
        works.add(work);
        bays.add(work.fields());
        draws.add(work.draws());
        sound.addAll(work.regions().sound);
        drafts.addAll(work.regions().drafts);
    }

    private Readings in(Bay bay, Readings all) {
        return new Readings(
                in(bay, all.moisture()),
                in(bay, all.taps()),
                in(bay, all.probes()),
                in(bay, all.feelers()),
                in(bay, all.plugs()),
                List.of());
    }

    private <R extends Reading> List<R> in(Bay bay, List<R> readings) {
        return readings.stream().filter(r -> bay.equals(plan.bayAt(r.spot()))).toList();
    }

    /** A rod is put to the bay where it went in; what it seems to say beyond a divider is an error of its drawing. */
    private List<Observation> inside(Bay bay, List<Observation> observations) {
        return observations.stream()
                .filter(o -> bay.equals(plan.bayAt(o.spot())))
                .toList();
    }

    /** Readings off the core: one by one, or counted where there are many of a kind. */
    private void setAside(Readings readings) {
        Map<Plan.OffCore, List<Reading>> off = new LinkedHashMap<>();
        Stream.of(readings.moisture(), readings.taps(), readings.probes(), readings.plugs(), readings.feelers())
                .flatMap(List::stream)
                .map(Reading.class::cast)
                .filter(r -> plan.bayAt(r.spot()) == null)
                .forEach(r -> off.computeIfAbsent(plan.offCore(r.spot()), k -> new ArrayList<>())
                        .add(r));
        off.forEach((why, same) -> {
            Reading first = same.get(0);
            if (same.size() > ONE_BY_ONE) {
                Origin file = new Origin(first.origin().file(), 0);
                String message = same.size() + " readings, the first " + first.id() + ": the reading " + why.words();
                findings.add(setAside(file, new About.OfFile(file), why, message));
            } else {
                same.forEach(r -> findings.add(setAside(r.origin(), About.of(r), why, "the reading " + why.words())));
            }
        });
    }

    private static Finding setAside(Origin origin, About about, Plan.OffCore why, String message) {
        return new Finding(
                Finding.Severity.DOUBT,
                origin,
                about,
                why.subject(),
                message,
                "set aside: it tells nothing of the core");
    }

    private BayFields.Cores coreOfCell() {
        if (face.all(Feature.LaminateArea.class).isEmpty()) {
            double core = survey.laminate(face.laminate()).coreMm();
            return cell -> core;
        }
        return cell -> survey.laminateAt(new Spot(face.name(), frame.x(cell), frame.y(cell)))
                .coreMm();
    }

    List<BayWork> bays() {
        return works;
    }

    List<NextReading> next() {
        return next;
    }

    /** None where the face was not read. */
    List<RegionDraft> drafts() {
        return coverage.nothing() ? List.of() : drafts;
    }

    /** Adds the face's empty space, draw by draw. */
    void addVoidMm3(double[] total) {
        for (int d = 0; d < total.length && !coverage.nothing(); d++) {
            total[d] += voidMm3[d];
        }
    }

    /** Adds the face's damaged area, draw by draw. */
    void addDamagedMm2(double[] total) {
        for (int d = 0; d < total.length && !coverage.nothing(); d++) {
            total[d] += damagedMm2[d];
        }
    }

    /** @param numbered the regions of all faces, R1 first */
    FaceDamage result(List<RegionDraft> numbered) {
        List<Region> regions = new ArrayList<>();
        for (int i = 0; i < numbered.size(); i++) {
            if (numbered.get(i).bay().face().equals(face.name())) {
                regions.add(numbered.get(i).named("R" + (i + 1), frame.cellMm()));
            }
        }
        boolean told = !coverage.nothing();
        List<Undecided> undecided = told
                ? works.stream().flatMap(w -> w.undecided().stream()).toList()
                : Stream.concat(plan.bays().stream().map(Bay::area), plan.solids().stream())
                        .map(area -> new Undecided(face.name(), area, Double.NaN, coverage.unread()))
                        .toList();
        return new FaceDamage(
                face,
                plan.bays(),
                surfaces(),
                regions,
                told ? sound : List.of(),
                undecided,
                told ? Quantiles.of(damagedMm2) : Quantiles.ZERO,
                told ? Quantiles.of(voidMm3) : Quantiles.ZERO,
                next,
                findings,
                EstimateNotes.of(bays));
    }

    private Surfaces surfaces() {
        return new Surfaces(
                raster(b -> b.index),
                raster(b -> b.indexSd),
                raster(b -> b.pWet),
                raster(b -> b.pLoose),
                raster(b -> b.pVoid),
                raster(b -> b.depthMm),
                raster(b -> b.depthSdMm));
    }

    private Raster raster(Function<BayFields, double[]> quantity) {
        double[] all = frame.empty().values();
        for (BayFields bay : bays) {
            double[] values = quantity.apply(bay);
            for (int i = 0; i < bay.cells.length; i++) {
                if (bay.inside[i]) {
                    all[bay.cells[i]] = values[i];
                }
            }
        }
        return frame.empty().with(all);
    }
}
