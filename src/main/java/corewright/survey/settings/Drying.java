package corewright.survey.settings;

/**
 * How wet core dries. Common practice unless said; a survey overrides any of them under {@code drying} in survey.yaml. What is low
 * and high here are the ends of the middle eight in ten cases.
 *
 * @param holeSpacingMm of the holes that core dries through, staggered
 * @param acrossLowMm2PerDay diffusion of water across the grain at 20 degrees, 1e-10 m2/s; balsa, from memory
 * @param acrossHighMm2PerDay 3e-10 m2/s
 * @param alongLowMm2PerDay along the grain, 1e-9 m2/s; balsa, from memory
 * @param alongHighMm2PerDay 3e-9 m2/s
 * @param surfaceLowMmPerDay coefficient of the surface in still air, 3e-8 m/s; from memory
 * @param surfaceHighMmPerDay in a draught, 3e-7 m/s
 * @param startLowPercent water over dry mass of core that counts as wet, where no sample was dried
 * @param startHighPercent soaked
 * @param daysAvailable the boat may dry for so long
 */
public record Drying(
        double holeSpacingMm,
        double acrossLowMm2PerDay,
        double acrossHighMm2PerDay,
        double alongLowMm2PerDay,
        double alongHighMm2PerDay,
        double surfaceLowMmPerDay,
        double surfaceHighMmPerDay,
        double startLowPercent,
        double startHighPercent,
        double daysAvailable) {
    /** The figures explained above. */
    public static final Drying DEFAULT = new Drying(50, 9, 26, 86, 260, 2.6, 26, 25, 100, 180);

    public Drying {
        Check.within("holeSpacingMm", holeSpacingMm, 10, 1000);
        Check.within("acrossLowMm2PerDay", acrossLowMm2PerDay, 0.01, 10_000);
        Check.within("acrossHighMm2PerDay", acrossHighMm2PerDay, acrossLowMm2PerDay, 10_000);
        Check.within("alongLowMm2PerDay", alongLowMm2PerDay, 0.01, 100_000);
        Check.within("alongHighMm2PerDay", alongHighMm2PerDay, alongLowMm2PerDay, 100_000);
        Check.within("surfaceLowMmPerDay", surfaceLowMmPerDay, 0.01, 10_000);
        Check.within("surfaceHighMmPerDay", surfaceHighMmPerDay, surfaceLowMmPerDay, 10_000);
        Check.within("startLowPercent", startLowPercent, 1, 1000);
        Check.within("startHighPercent", startHighPercent, startLowPercent, 1000);
        Check.positive("daysAvailable", daysAvailable);
    }
}
