package corewright.damage;

import corewright.reuse.Memory;
import corewright.survey.Face;
import corewright.survey.Survey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the readings say of every face: see the package for the steps. */
public final class Damage {
    private Damage() {}

    /**
     * The damage map of a survey. The same survey gives the same map, bit for bit.
     *
     * @param memory gives the bays that are as they were
     */
    public static Fitted fit(Survey survey, Memory memory) {
        return fit(survey, new Bays.Afresh(memory));
    }

    /**
     * The damage map as it follows a person's editing: ranges, sills and drifts are held, so that the map moves only where
     * the readings do. Surfaces, regions and findings are those of the readings as they stand, but cavities are not drawn
     * anew and places to read next not sought anew. Volumes are those that the cavities drawn last leave within the new
     * regions, and the result says that they are old. A bay that is as it was is taken over, a new one worked in full.
     *
     * @param held what was fitted before, by this or by {@link #fit}
     */
    public static Fitted follow(Survey survey, Parameters held) {
        return fit(survey, new Bays.Held(held));
    }

    private static Fitted fit(Survey whole, Bays way) {
        Judged judged = new Judged(whole);
        Survey survey = judged.survey();
        Map<String, MeterScale> scales = MeterScale.all(survey);
        TapScale taps = new TapScale(survey);
        double[] voidMm3 = new double[survey.settings().numerics().realisations()];
        double[] damagedMm2 = new double[voidMm3.length];
        List<FaceWork> works = new ArrayList<>();
        List<RegionDraft> drafts = new ArrayList<>();
        List<BayWork> bays = new ArrayList<>();
        Map<String, List<NextReading>> next = new HashMap<>();
        for (Face face : survey.faces()) {
            FaceWork work = new FaceWork(judged, face, scales, taps, way);
            work.addVoidMm3(voidMm3);
            work.addDamagedMm2(damagedMm2);
            drafts.addAll(work.drafts());
            bays.addAll(work.bays());
            next.put(face.name(), work.next());
            works.add(work);
        }
        List<RegionDraft> numbered = RegionDraft.gravestFirst(drafts);
        DamageMap map = new DamageMap(
                works.stream().map(w -> w.result(numbered)).toList(), Quantiles.of(voidMm3), Quantiles.of(damagedMm2));
        return new Fitted(map, new Parameters(bays, next), bays.stream().anyMatch(BayWork::old));
    }
}
