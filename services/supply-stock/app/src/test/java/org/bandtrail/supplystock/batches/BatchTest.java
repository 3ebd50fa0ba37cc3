package org.bandtrail.supplystock.batches;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;

class BatchTest {
    private static final BatchId BATCH = new BatchId("B-0001");
    private static final DepotId DEPOT = new DepotId("NORTH");
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final PersonId ANNA = new PersonId("P-07");
    private static final Place WITH_ANNA = Place.crew(ANNA);
    private static final Place TREE = Place.tree(new TreeId("T-0001"));
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));

    @Test
    void as_many_pieces_as_the_depot_has_are_handed_out_and_one_more_is_refused() {
        Batch batch = after(receive(500));

        assertThat(after(receive(500), handOut(500)).holding().at(WITH_ANNA)).isEqualTo(500);
        assertThatExceptionOfType(BatchRefused.TooFewInDepot.class)
                .isThrownBy(() -> batch.decide(handOut(501)))
                .withMessage(
                        "Batch [B-0001] has 500 pieces in depot NORTH, not 501 pieces. Hand out fewer, or take the rest"
                                + " from another batch.");
    }

    @Test
    void nothing_cannot_be_handed_out() {
        assertThatExceptionOfType(BatchRefused.NothingWanted.class)
                .isThrownBy(() -> after(receive(500)).decide(handOut(0)));
    }

    @Test
    void tape_is_not_counted() {
        assertThatExceptionOfType(BatchRefused.NotCounted.class)
                .isThrownBy(() -> Batch.UNKNOWN.decide(receive(MaterialKind.TAPE, 5)));
    }

    @Test
    void a_batch_of_none_is_refused_and_one_of_a_piece_is_not() {
        assertThatExceptionOfType(BatchRefused.BatchWithoutPieces.class)
                .isThrownBy(() -> Batch.UNKNOWN.decide(receive(0)));
        assertThat(Batch.UNKNOWN.decide(receive(1))).hasSize(1);
    }

    @Test
    void each_piece_costs_its_share_and_all_together_cost_what_was_paid() {
        Batch batch = after(receive(3), handOut(3), fit(1));
        assertThat(batch.holding().charged()).as("1 of 3 for 100").isEqualTo(33);

        assertThat(after(receive(3), handOut(3), fit(1), fit(1), fit(1))
                        .holding()
                        .charged())
                .isEqualTo(100);
    }

    @Test
    void more_than_anybody_handed_out_is_accepted_and_leaves_a_deficit() {
        assertThat(after(receive(3), handOut(3), fit(5)).holding().at(WITH_ANNA))
                .isEqualTo(-2);
    }

    private static BatchCommand receive(long pieces) {
        return receive(MaterialKind.FASTENER, pieces);
    }

    private static BatchCommand receive(MaterialKind kind, long pieces) {
        return new BatchCommand.Receive(
                BATCH,
                new MaterialCode("PIN-15"),
                kind,
                Pieces.of(pieces),
                Money.of(100, "USD"),
                Place.depot(DEPOT),
                KEEPER,
                NOW);
    }

    private static BatchCommand handOut(long pieces) {
        return new BatchCommand.HandOut(BATCH, new KitId("K-1"), DEPOT, ANNA, Pieces.of(pieces), KEEPER, NOW);
    }

    private static BatchCommand fit(long pieces) {
        return new BatchCommand.RecordFact(
                BATCH, "band B-1", WITH_ANNA, TREE, Pieces.of(pieces), new SiteId("S-01"), ANNA, NOW);
    }

    private static Batch after(BatchCommand... commands) {
        Batch batch = Batch.UNKNOWN;
        for (BatchCommand command : commands) {
            for (BatchEvent event : batch.decide(command)) {
                batch = batch.evolve(event);
            }
        }
        return batch;
    }
}
