package corewright.decision;

import java.util.List;

/**
 * Days of invented plans: what they ask that no one can do, none wanted. One or two places each, 250 to 700 mm, of voids and
 * loose skins, on decks, walls and overhead, 10 to 30 °C, 10 to 100 kPa, one or two people, mixes with 3 to 30 minutes of
 * work time. Run: {@code mvn -o -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=corewright.decision.DayBenchmark
 * -Dexec.args="1 200"}.
 */
public final class DayBenchmark {
    private DayBenchmark() {}

    /** @param args first seed, last seed */
    public static void main(String[] args) {
        int faulty = 0;
        int all = 0;
        long first = Long.parseLong(args[0]);
        long last = Long.parseLong(args[1]);
        for (long seed = first; seed <= last; seed++) {
            List<String> faults = DayFaults.of(DayFaults.deckOf(seed));
            long number = seed;
            faults.forEach(f -> System.out.println(number + ": " + f));
            faulty += faults.isEmpty() ? 0 : 1;
            all += faults.size();
        }
        System.out.println((last - first + 1) + " days, " + faulty + " with faults, " + all + " faults");
    }
}
