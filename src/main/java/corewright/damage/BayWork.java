package corewright.damage;

import corewright.field.Wanted;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One bay from its readings to its regions, with all that went in: the same again gives the same again.
 *
 * @param draws the bay's cavities; of an earlier state of its readings where {@code old}
 */
@SuppressWarnings("ArrayRecordComponent")
record BayWork(
        BayInput input,
        BayFields fields,
        VoidDraws draws,
        boolean old,
        Regions regions,
        List<Undecided> undecided,
        List<Double> totalMm3,
        List<Double> damagedMm2) {

    /** Everything fitted and drawn. */
    static BayWork of(BayInput input, Frame frame, BayFields.Cores cores) {
        BayFields fields = new BayFields(input, frame, cores, null);
        return new BayWork(input, frame, fields, drawn(input, fields, frame), null);
    }

    /** The same bay with other readings: ranges, sills and drifts are held, and the cavities are these as far as they can be. */
    BayWork followed(BayInput other, Frame frame, BayFields.Cores cores) {
        if (input.equals(other)) {
            return this;
        }
        BayFields next = new BayFields(other, frame, cores, fields);
        boolean sameCells = Arrays.equals(fields.cells, next.cells);
        return sameCells
                ? new BayWork(other, frame, next, draws, damagedMm2)
                : new BayWork(other, frame, next, drawn(other, next, frame), null);
    }

    /** @param held damaged areas drawn before the change, null to draw them */
    private BayWork(BayInput input, Frame frame, BayFields fields, VoidDraws draws, @Nullable List<Double> held) {
        this(
                input,
                fields,
                draws,
                held != null,
                new Regions(fields, frame, input.thresholds(), draws),
                UndecidedAreas.of(fields, frame, input.thresholds()),
                Arrays.stream(draws.volumesMm3(new int[fields.cells.length], 1)[0])
                        .boxed()
                        .toList(),
                held != null ? held : AreaDraws.of(fields, frame, draws, seed(input) + 1));
    }

    private static long seed(BayInput input) {
        return input.numerics().seed() + input.bay().name().hashCode();
    }

    /** From which this bay's draws are made. */
    long seed() {
        return seed(input);
    }

    private static VoidDraws drawn(BayInput input, BayFields fields, Frame frame) {
        Wanted.check();
        return new VoidDraws(fields, frame, input.numerics().realisations(), seed(input));
    }
}
