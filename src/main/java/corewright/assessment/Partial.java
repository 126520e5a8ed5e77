package corewright.assessment;

import corewright.contour.Raster;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.NextReading;
import corewright.damage.Quantiles;
import corewright.damage.Surfaces;
import corewright.decision.Decision;
import corewright.repair.plan.RepairOptions;
import corewright.repair.work.WorkDone;
import corewright.stiffness.Gains;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Assessments of which only the first parts are there. */
public final class Partial {
    private static final Quantiles NOTHING = new Quantiles(0, 0, 0);
    private static final RepairOptions NO_PLANS = new RepairOptions(List.of(), List.of());
    private static final Decision OPEN = new Decision(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    private Partial() {}

    /** A survey of which nothing is concluded yet, so that plan and readings can be shown. */
    public static Assessment bare(Survey survey, List<Finding> findings) {
        List<FaceDamage> faces = survey.faces().stream().map(Partial::face).toList();
        return of(survey, new DamageMap(faces, NOTHING, NOTHING), findings, List.of(), Ages.AWAITED);
    }

    /** The part that rests on the map alone: nothing of stiffness, repair or decision in it. */
    public static Assessment mapped(Survey survey, List<Finding> intakeFindings, DamageMap damage) {
        List<Finding> findings = Assessor.gravestFirst(List.of(
                intakeFindings,
                damage.faces().stream().flatMap(f -> f.findings().stream()).toList()));
        return of(survey, damage, findings, NextOverall.of(damage, List.of()), Ages.MAPPED);
    }

    /** Whether two surveys differ in nothing that anything is concluded from. */
    public static boolean alike(Survey one, Survey other) {
        return Part.PHOTOS.with(one, other.photos()).equals(other);
    }

    private static Assessment of(
            Survey survey, DamageMap damage, List<Finding> findings, List<NextReading> next, Ages ages) {
        return new Assessment(
                survey, damage, StiffnessMap.NONE, NO_PLANS, Gains.NONE, OPEN, WorkDone.NONE, findings, next, ages);
    }

    private static FaceDamage face(Face face) {
        Coordinate at = face.outline().getCoordinate();
        Raster one = new Raster(at.x, at.y, 25, 1, 1, new double[] {Double.NaN});
        return new FaceDamage(
                face,
                List.of(),
                new Surfaces(one, one, one, one, one, one, one),
                List.of(),
                List.of(),
                List.of(),
                NOTHING,
                NOTHING,
                List.of(),
                List.of(),
                List.of());
    }
}
