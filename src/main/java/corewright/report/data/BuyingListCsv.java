package corewright.report.data;

import corewright.assessment.Assessment;
import corewright.decision.BuyingItem;
import corewright.report.page.Numbers;
import java.util.List;

/** buying-list.csv: what is needed, what to have at hand, and how the figures came about. */
public final class BuyingListCsv {
    private BuyingListCsv() {}

    public static CsvTable of(Assessment assessment) {
        return of(assessment.decision().buying());
    }

    /** Of another list, such as what is left. */
    public static CsvTable of(List<BuyingItem> items) {
        CsvTable table = new CsvTable("item,plan,buy,unit,basis");
        for (BuyingItem item : items) {
            int decimals = item.unit().equals("g") ? 1 : 3;
            table.add(
                    item.item(),
                    Numbers.rounded(item.plan(), decimals),
                    Numbers.rounded(item.buy(), decimals),
                    item.unit(),
                    item.basis());
        }
        return table;
    }
}
