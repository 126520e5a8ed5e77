package corewright.desktop.state;

import corewright.assessment.Assessment;
import corewright.contour.Raster;
import corewright.damage.DamageMap;
import corewright.damage.FaceDamage;
import corewright.damage.Quantiles;
import corewright.damage.Surfaces;
import corewright.decision.Decision;
import corewright.repair.plan.RepairOptions;
import corewright.stiffness.StiffnessMap;
import corewright.survey.Face;
import corewright.survey.Finding;
import corewright.survey.Part;
import corewright.survey.Survey;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/** A survey of which nothing is concluded yet, so that plan and readings show while the chain is calculated. */
public final class Bare {
    private static final Quantiles NOTHING = new Quantiles(0, 0, 0);

    private Bare() {}

    public static Assessment of(Survey survey, List<Finding> findings) {
        List<FaceDamage> faces = survey.faces().stream().map(Bare::face).toList();
        return new Assessment(
                survey,
                new DamageMap(faces, NOTHING, NOTHING),
                StiffnessMap.NONE,
                new RepairOptions(List.of(), List.of()),
                new Decision(List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
                findings,
                List.of());
    }

    /** What the plan shows; the same again while nothing else came, so that nothing is painted twice. */
    static final class Shown {
        private @Nullable Survey survey;
        private @Nullable Assessment found;
        private @Nullable Assessment last;

        public Assessment of(Survey now, @Nullable Assessment newest, List<Finding> notes) {
            Assessment same = last;
            if (same == null || survey != now || found != newest) {
                same = shown(now, newest, notes);
            }
            survey = now;
            found = newest;
            last = same;
            return same;
        }
    }

    /** What is found with the readings as they are; the bare plan where nothing is found or faces were drawn anew since. */
    private static Assessment shown(Survey survey, @Nullable Assessment a, List<Finding> notes) {
        if (a == null
                || !a.damage().faces().stream().map(FaceDamage::face).toList().equals(survey.faces())) {
            return of(survey, notes);
        }
        return a.survey() == survey
                ? a
                : new Assessment(survey, a.damage(), a.stiffness(), a.options(), a.decision(), a.findings(), a.next());
    }

    /** Whether two surveys differ in nothing that anything is concluded from. */
    static boolean onlyPhotographs(@Nullable Survey before, Survey now) {
        return before != null && Part.PHOTOS.with(before, now.photos()).equals(now);
    }

    /** The map follows the survey; what rests on it is of before, and the window says so. */
    static Assessment followed(Assessment before, Survey now, DamageMap map) {
        return new Assessment(
                now, map, before.stiffness(), before.options(), before.decision(), before.findings(), before.next());
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
