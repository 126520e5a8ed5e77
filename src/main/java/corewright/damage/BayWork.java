package corewright.damage;

import corewright.survey.Face;
import corewright.survey.Laminate;
import corewright.survey.Settings;
import corewright.survey.Survey;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One bay from its readings to its regions, with all that went in: the same again gives the same again.
 *
 * @param draws the bay's cavities; of an earlier state of its readings where {@code stale}
 */
@SuppressWarnings("ArrayRecordComponent")
record BayWork(
        Input input,
        BayFields fields,
        VoidDraws draws,
        boolean stale,
        Regions regions,
        List<Undecided> undecided,
        List<Double> totalMm3,
        List<Double> damagedMm2) {

    /** Everything a bay's result depends on, but for what was frozen. */
    record Input(Face face, Bay bay, BayFields.Seen seen, List<Laminate> laminates, Settings settings) {
        static Input of(Survey survey, Face face, Bay bay, BayFields.Seen seen) {
            return new Input(face, bay, seen, survey.laminates(), survey.settings());
        }
    }

    /**
     * @param earlier work on the same bay, whose ranges, sills and drifts are kept; null to fit them
     * @param following whether the earlier cavities will do, as while a person edits
     */
    static BayWork of(Input input, Frame frame, BayFields.Cores cores, @Nullable BayWork earlier, boolean following) {
        if (earlier != null && earlier.input.equals(input) && (following || !earlier.stale)) {
            return earlier;
        }
        Settings settings = input.settings;
        BayFields fields =
                new BayFields(input.bay, frame, input.seen, settings, cores, earlier == null ? null : earlier.fields);
        boolean stale = following && earlier != null && Arrays.equals(earlier.fields.cells, fields.cells);
        VoidDraws draws = stale && earlier != null ? earlier.draws : drawn(input, fields, frame);
        return new BayWork(
                input,
                fields,
                draws,
                stale,
                new Regions(fields, frame, settings.thresholds(), draws),
                UndecidedAreas.of(fields, frame, settings.thresholds()),
                Arrays.stream(draws.volumesMm3(new int[fields.cells.length], 1)[0])
                        .boxed()
                        .toList(),
                stale && earlier != null ? earlier.damagedMm2 : AreaDraws.of(fields, frame, draws, seed(input) + 1));
    }

    private static long seed(Input input) {
        return input.settings.numerics().seed() + input.bay.name().hashCode();
    }

    private static VoidDraws drawn(Input input, BayFields fields, Frame frame) {
        return new VoidDraws(fields, frame, input.settings.numerics().realisations(), seed(input));
    }
}
