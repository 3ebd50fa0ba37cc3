package org.bandtrail.frontdesk.kits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.junit.jupiter.api.Test;

class SettlementDrawingTest {
    @Test
    void the_parts_fill_the_bar_in_proportion_and_in_the_order_of_the_sentence() {
        SettlementDrawing drawing = SettlementDrawing.of(List.of(reel(10_000, 5_000, 2_500, 0, 2_500, 0)))
                .getFirst();

        assertThat(drawing.parts())
                .extracting(part -> part.name() + " " + part.x() + " " + part.width())
                .containsExactly("fitted 0 500", "returned 500 250", "missing 750 250");
    }

    @Test
    void reels_and_fasteners_are_drawn_apart_and_missing_that_was_settled_is_still_missing() {
        List<SettlementDrawing> drawings = SettlementDrawing.of(
                List.of(reel(1_000, 900, 0, 0, 0, 100), line("batch", "pieces", 50, 0, 0, 0, 0, 0, 50)));

        assertThat(drawings).extracting(SettlementDrawing::unit).containsExactly("mm", "pieces");
        assertThat(drawings.getFirst().parts())
                .extracting(part -> part.name() + " " + part.quantity())
                .containsExactly("fitted 900", "missing 100");
    }

    @Test
    void what_is_negative_stands_in_the_sentence_and_has_no_width() {
        SettlementDrawing drawing = SettlementDrawing.of(List.of(line("reel", "mm", 1_000, 1_200, 0, 0, 0, 0, -200)))
                .getFirst();

        assertThat(drawing.parts())
                .extracting(part -> part.name() + " " + part.quantity() + " " + part.width())
                .containsExactly("fitted 1200 1000", "still out -200 0");
    }

    private static Kit.Line reel(
            long handedOut, long fitted, long returned, long scrapped, long missing, long settled) {
        return line("reel", "mm", handedOut, fitted, returned, scrapped, missing, settled, 0);
    }

    private static Kit.Line line(
            String holding,
            String unit,
            long handedOut,
            long fitted,
            long returned,
            long scrapped,
            long missing,
            long settled,
            long stillOut) {
        return new Kit.Line(
                holding, "R-1", "P-7", unit, handedOut, fitted, returned, scrapped, missing, settled, 0, stillOut);
    }
}
