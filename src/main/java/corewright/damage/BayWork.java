package corewright.damage;

import corewright.survey.Face;
import corewright.survey.Laminate;
import corewright.survey.Settings;
import corewright.survey.Survey;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One bay from its readings to its regions, with all that went in: the same again gives the same again. */
@SuppressWarnings("ArrayRecordComponent")
record BayWork(
        Input input,
        BayFields fields,
        VoidDraws draws,
        Regions regions,
        List<Undecided> undecided,
        List<Double> totalMm3) {

    /** Everything a bay's result depends on, but for what was frozen. */
    record Input(Face face, Bay bay, BayFields.Seen seen, List<Laminate> laminates, Settings settings) {
        static Input of(Survey survey, Face face, Bay bay, BayFields.Seen seen) {
            return new Input(face, bay, seen, survey.laminates(), survey.settings());
        }
    }

    /** @param earlier work on the same bay, whose ranges, sills and drifts are kept; null to fit them */
    static BayWork of(Input input, Frame frame, BayFields.Cores cores, @Nullable BayWork earlier) {
        if (earlier != null && earlier.input.equals(input)) {
            return earlier;
        }
        Settings settings = input.settings;
        BayFields fields =
                new BayFields(input.bay, frame, input.seen, settings, cores, earlier == null ? null : earlier.fields);
        long seed = settings.numerics().seed() + input.bay.name().hashCode();
        VoidDraws draws = new VoidDraws(fields, frame, settings.numerics().realisations(), seed);
        return new BayWork(
                input,
                fields,
                draws,
                new Regions(fields, frame, settings.thresholds(), draws),
                UndecidedAreas.of(fields, frame, settings.thresholds()),
                Arrays.stream(draws.volumesMm3(new int[fields.cells.length], 1)[0])
                        .boxed()
                        .toList());
    }
}
