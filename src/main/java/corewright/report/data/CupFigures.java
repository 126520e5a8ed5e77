package corewright.report.data;

import corewright.repair.plan.Batch;
import corewright.repair.plan.CupTarget;
import corewright.report.page.Numbers;
import java.math.BigDecimal;

/**
 * What the scale shows for a cup after zeroing, in tenths of a gram as batches.csv has its parts: the parts on a card and
 * in the files add up to what the scale shows.
 *
 * @param firstG resin to here
 * @param secondG hardener on top of it to here
 */
public record CupFigures(BigDecimal firstG, BigDecimal secondG) {
    public static CupFigures of(Batch batch) {

        BigDecimal first = Numbers.grams(CupTarget.of(batch).firstToG());
        return new CupFigures(first, first.add(Numbers.grams(batch.partBG())));
    }

    public BigDecimal hardenerG() {
        return secondG.subtract(firstG);
    }
}
