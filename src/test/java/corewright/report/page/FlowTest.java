package corewright.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import corewright.drawing.kit.Paper.Anchor;
import corewright.report.page.RuledTable.Column;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No table leaves one or two rows alone on a page, at its beginning or at its end. */
class FlowTest {
    @ParameterizedTest
    @CsvSource({
        "10, 0, 12, false, 10", // all fits
        "10, 0, 8, false, 7", // else two would be left over
        "10, 0, 9, false, 7",
        "10, 0, 5, false, 5",
        "10, 0, 2, false, 0", // two alone under the heading: on to the next page
        "5, 0, 4, false, 0", // neither part would have three
        "5, 0, 4, true, 4", // on a page of its own nothing better is to be had
        "2, 0, 1, false, 0",
        "20, 17, 3, true, 3",
        "20, 12, 6, true, 5"
    })
    void fewRowsAreKeptTogether(int size, int from, int fitting, boolean fresh, int expected) {
        assertThat(Flow.rows(size, from, fitting, fresh)).isEqualTo(expected);
    }

    /** Every length of table, begun at every height of the page. */
    @Test
    void noPageHasOneOrTwoRowsOfALongerTable() {
        for (int rows = 3; rows <= 120; rows += 3) {
            for (double used = 0; used < 250; used += 24) {
                RuledTable table = new RuledTable(List.of(new Column("Head", 60, Anchor.LEFT)));
                IntStream.range(0, rows).forEach(i -> table.row(List.of("row " + i)));
                Flow flow = new Flow(PageSize.A4);
                flow.block(used, (paper, top) -> {});
                flow.table("Heading", table);
                assertThat(flow.laidRows())
                        .as(rows + " rows below " + used + " mm")
                        .allMatch(n -> n >= 3);
                assertThat(flow.laidRows().stream().mapToInt(n -> n).sum()).isEqualTo(rows);
            }
        }
    }
}
