package org.bandtrail.supplystock.receiving;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.deliveries.Condition;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.Finding;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class InspectionTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);
    private static final Inspection INSPECTION = new Inspection(5, 2);
    private static final OrderedLine TEN_REELS = ordered(MaterialKind.TAPE, OrderUnit.REEL, "50 m", 10);

    private static OrderedLine ordered(MaterialKind kind, OrderUnit unit, String content, long units) {
        return new OrderedLine(
                1, new MaterialCode("M-" + kind), kind, Packing.of(kind, unit, content), units, 100, 1, null, null);
    }

    private static DeliveredHolding piece(long quantity, @Nullable Long width, @Nullable LocalDate expires) {
        return new DeliveredHolding(
                "reel",
                "R-" + quantity,
                quantity,
                width,
                null,
                expires,
                Condition.SOUND,
                Money.zero("USD"),
                Place.depot(new DepotId("N")));
    }

    private static List<String> found(OrderedLine ordered, long units, @Nullable Long stated, long... quantities) {
        List<DeliveredHolding> pieces = Stream.of(
                        java.util.Arrays.stream(quantities).boxed().toArray(Long[]::new))
                .map(each -> piece(each, null, null))
                .toList();
        DeliveredLine line =
                new DeliveredLine(1, 1, ordered.material(), ordered.kind(), units, Money.zero("USD"), pieces);
        var expected = new Inspection.Expected(ordered, ordered.units(), ordered.ordered(), stated, 127L);
        return INSPECTION.of(line, expected, DAY).stream()
                .map(each -> each.what() + " " + each.id() + " " + each.expected() + " / " + each.found())
                .toList();
    }

    @Test
    void a_reel_is_short_only_beyond_what_measuring_lets_pass() {
        assertThat(found(TEN_REELS, 1, null, 49_750)).isEmpty();
        assertThat(found(TEN_REELS, 1, null, 49_749)).containsExactly("SHORT R-49749 50.000 m / 49.749 m");
        assertThat(found(TEN_REELS, 1, null, 50_250)).isEmpty();
        assertThat(found(TEN_REELS, 1, null, 50_251)).containsExactly("OVER R-50251 50.000 m / 50.251 m");
    }

    @Test
    void the_paper_of_the_supplier_is_compared_with_what_was_counted() {
        assertThat(found(TEN_REELS, 2, 3L, 50_000, 50_000)).containsExactly("SHORT  3 reels on the paper / 2 reels");
        assertThat(found(TEN_REELS, 1, 1L, 50_000)).isEmpty();
    }

    @Test
    void more_than_is_to_come_is_named() {
        OrderedLine one = ordered(MaterialKind.TAPE, OrderUnit.REEL, "50 m", 1);
        assertThat(found(one, 2, null, 50_000, 50_000)).containsExactly("OVER  1 reel to come / 2 reels");
        OrderedLine metres = ordered(MaterialKind.MESH, OrderUnit.METRE, "", 100);
        assertThat(found(metres, 0, null, 60_000, 41_000)).containsExactly("OVER  100.000 m to come / 101.000 m");
        assertThat(found(metres, 0, null, 60_000, 40_500)).isEmpty();
    }

    @Test
    void boxes_are_compared_as_a_whole_and_pieces_to_the_last_one() {
        OrderedLine boxes = ordered(MaterialKind.TAPE, OrderUnit.BOX, "12 x 50 m", 2);
        assertThat(found(boxes, 1, null, 300_000, 300_000)).isEmpty();
        assertThat(found(boxes, 1, null, 300_000, 290_000)).containsExactly("SHORT  600.000 m / 590.000 m");
        OrderedLine packs = ordered(MaterialKind.FASTENER, OrderUnit.PACK, "100", 5);
        assertThat(found(packs, 5, null, 499)).containsExactly("SHORT  500 pieces / 499 pieces");
        assertThat(found(packs, 5, null, 500)).isEmpty();
    }

    @Test
    void width_and_age_are_looked_at_and_what_nobody_measured_is_not_guessed() {
        DeliveredLine line = new DeliveredLine(
                1,
                null,
                TEN_REELS.material(),
                MaterialKind.TAPE,
                0,
                Money.zero("USD"),
                List.of(
                        piece(1, 129L, DAY),
                        piece(2, 130L, null),
                        piece(3, 124L, null),
                        piece(4, null, DAY.minusDays(1))));
        var expected = new Inspection.Expected(null, 0, 0, null, 127L);
        assertThat(INSPECTION.of(line, expected, DAY))
                .extracting(each -> each.what() + " " + each.id())
                .containsExactly("WRONG_WIDTH R-2", "WRONG_WIDTH R-3", "EXPIRED R-4");
    }

    @Test
    void what_nobody_waits_for_any_more_is_named() {
        DeliveredLine line = new DeliveredLine(
                1,
                1,
                TEN_REELS.material(),
                MaterialKind.TAPE,
                1,
                Money.zero("USD"),
                List.of(piece(50_000, null, null)));
        assertThat(INSPECTION.of(line, new Inspection.Expected(TEN_REELS, 0, 0, null, null), DAY))
                .extracting(Finding::what)
                .containsExactly(Finding.What.NOT_EXPECTED);
    }
}
