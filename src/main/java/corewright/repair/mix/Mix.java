package corewright.repair.mix;

import corewright.damage.Quantiles;
import corewright.repair.plan.Amounts;
import corewright.survey.settings.Resin;
import java.util.List;

/**
 * Grams for an empty space.
 *
 * <p>{@code net = pack V rho / X}: the mix rises to X times its volume and is overfilled by {@code pack}. {@code gross =
 * net / (1 - waste)}: what stays in pot and nozzle. Parts by weight.
 *
 * @param netG in the cavity
 * @param grossG to be mixed
 */
public record Mix(double netG, double grossG, double partAG, double partBG) {
    /** For a cavity of this size. */
    public static Mix of(double cavityMm3, Resin resin, double wasteFraction) {
        return ofNet(
                resin.pack() * cavityMm3 * ReachLaw.densityGPerMm3(resin) / resin.expansion(), resin, wasteFraction);
    }

    /** For so many grams into the holes. */
    public static Mix ofNet(double net, Resin resin, double wasteFraction) {
        double gross = net / (1 - wasteFraction);
        double resinG = gross / (1 + resin.hardenerPerResin());
        return new Mix(net, gross, resinG, gross - resinG);
    }

    /** The sum written out, so that anyone can check it with a pocket calculator. */
    public static List<String> arithmetic(Quantiles cavityMm3, Resin resin, double wasteFraction) {
        Mix plan = of(cavityMm3.p50(), resin, wasteFraction);
        Mix buy = of(cavityMm3.p90(), resin, wasteFraction);
        return List.of(
                "Empty space: most likely " + Amounts.litres(cavityMm3.p50()) + "; in 8 cases of 10 between "
                        + Amounts.litres(cavityMm3.p10()) + " and " + Amounts.litres(cavityMm3.p90()) + ".",
                line(cavityMm3.p50(), plan, resin, wasteFraction) + ": " + Amounts.grams(plan.partAG) + " resin and "
                        + Amounts.grams(plan.partBG) + " hardener.",
                "To have at hand: " + line(cavityMm3.p90(), buy, resin, wasteFraction) + ".");
    }

    private static String line(double cavityMm3, Mix mix, Resin resin, double wasteFraction) {
        String volume = Amounts.litres(cavityMm3);
        String unit = volume.endsWith("millilitres")
                ? Amounts.plain(resin.densityKgM3() / 1000) + " g per millilitre"
                : Amounts.plain(resin.densityKgM3()) + " g per litre";
        String rise = resin.expansion() > 1 || resin.pack() > 1
                ? " × " + Amounts.plain(resin.pack()) + " / " + Amounts.plain(resin.expansion())
                : "";
        return volume + rise + " × " + unit + " = " + Amounts.grams(mix.netG) + "; with "
                + Amounts.percent(wasteFraction) + " waste " + Amounts.grams(mix.grossG);
    }
}
