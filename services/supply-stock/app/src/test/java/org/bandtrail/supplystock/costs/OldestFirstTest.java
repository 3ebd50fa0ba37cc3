package org.bandtrail.supplystock.costs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.costs.OldestFirst.Choice;
import org.bandtrail.supplystock.costs.OldestFirst.OnShelf;
import org.bandtrail.supplystock.costs.OldestFirst.Pick;
import org.junit.jupiter.api.Test;

/** Which batches a number of fasteners comes from. */
class OldestFirstTest {
    private static final OnShelf MAY = onShelf("F-9", "2026-05-04T08:00:00Z", 500);
    private static final OnShelf APRIL = onShelf("F-2", "2026-04-01T08:00:00Z", 40);
    private static final OnShelf APRIL_TOO = onShelf("F-1", "2026-04-01T08:00:00Z", 25);

    @Test
    void the_oldest_batch_is_used_up_before_the_next_is_opened() {
        assertThat(OldestFirst.choose(Pieces.of(60), List.of(MAY, APRIL)))
                .isEqualTo(new Choice(List.of(pick("F-2", 40), pick("F-9", 20)), Pieces.ZERO));
    }

    @Test
    void batches_of_the_same_moment_are_taken_by_identity() {
        assertThat(OldestFirst.choose(Pieces.of(30), List.of(APRIL, APRIL_TOO)).picks())
                .containsExactly(pick("F-1", 25), pick("F-2", 5));
    }

    @Test
    void empty_batches_and_deficits_are_passed_over() {
        OnShelf deficit = onShelf("F-0", "2026-03-01T08:00:00Z", -10);
        OnShelf empty = onShelf("F-3", "2026-03-02T08:00:00Z", 0);
        assertThat(OldestFirst.choose(Pieces.of(10), List.of(deficit, empty, APRIL))
                        .picks())
                .containsExactly(pick("F-2", 10));
    }

    @Test
    void exactly_what_is_there_is_complete_and_one_more_is_one_missing() {
        assertThat(OldestFirst.choose(Pieces.of(40), List.of(APRIL)).complete()).isTrue();
        assertThat(OldestFirst.choose(Pieces.of(41), List.of(APRIL)).missing()).isEqualTo(Pieces.of(1));
        assertThat(OldestFirst.choose(Pieces.of(3), List.of()).missing()).isEqualTo(Pieces.of(3));
    }

    @Test
    void fewer_than_one_piece_is_refused_by_name() {
        assertThatThrownBy(() -> OldestFirst.choose(Pieces.ZERO, List.of(APRIL)))
                .hasMessageContaining("[0]");
    }

    private static OnShelf onShelf(String batch, String receivedAt, long pieces) {
        return new OnShelf(new BatchId(batch), Instant.parse(receivedAt), Pieces.of(pieces));
    }

    private static Pick pick(String batch, long pieces) {
        return new Pick(new BatchId(batch), Pieces.of(pieces));
    }
}
