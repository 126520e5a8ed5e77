package corewright.report;

import corewright.assessment.Assessment;
import corewright.decision.BuyingItem;

/** buying-list.csv: what is needed, what to have at hand, and how the figures came about. */
final class BuyingListCsv {
    private BuyingListCsv() {}

    static Table of(Assessment assessment) {
        Table table = new Table("item,plan,buy,unit,basis");
        for (BuyingItem item : assessment.decision().buying()) {
            table.add(
                    item.item(),
                    Numbers.rounded(item.plan(), 3),
                    Numbers.rounded(item.buy(), 3),
                    item.unit(),
                    item.basis());
        }
        return table;
    }
}
