package corewright.damage;

import corewright.reuse.Memory;
import java.util.List;
import java.util.function.Supplier;

/** How the bays of a survey are worked. */
sealed interface Bays {
    /** A bay from its readings to its regions. */
    BayWork work(BayInput input, Frame frame, BayFields.Cores cores);

    /** Places to read next on a face, from its bays. */
    List<NextReading> next(String face, List<BayWork> bays, Supplier<List<NextReading>> sought);

    /** Everything is fitted, drawn and sought, or remembered from the same input. */
    record Afresh(Memory memory) implements Bays {
        /** What places to read next depend on: the bays, by what each depends on. */
        private record NextInput(String face, List<BayInput> bays) {}

        @Override
        public BayWork work(BayInput input, Frame frame, BayFields.Cores cores) {
            return memory.of(input, i -> BayWork.of(i, frame, cores));
        }

        @Override
        public List<NextReading> next(String face, List<BayWork> bays, Supplier<List<NextReading>> sought) {
            List<BayInput> inputs = bays.stream().map(BayWork::input).toList();
            return memory.of(new NextInput(face, inputs), i -> sought.get());
        }
    }

    /** What was fitted before is held; cavities and places to read next are of before. */
    record Held(Parameters parameters) implements Bays {
        @Override
        public BayWork work(BayInput input, Frame frame, BayFields.Cores cores) {
            BayWork earlier = parameters.of(input.bay());
            return earlier == null ? BayWork.of(input, frame, cores) : earlier.followed(input, frame, cores);
        }

        @Override
        public List<NextReading> next(String face, List<BayWork> bays, Supplier<List<NextReading>> sought) {
            List<NextReading> suggested = parameters.next(face);
            return suggested == null ? sought.get() : suggested;
        }
    }
}
