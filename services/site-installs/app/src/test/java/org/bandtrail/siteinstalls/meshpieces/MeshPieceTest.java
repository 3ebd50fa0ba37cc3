package org.bandtrail.siteinstalls.meshpieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.junit.jupiter.api.Test;

class MeshPieceTest {
    private static final MeshPieceId PIECE = new MeshPieceId("MP-1");
    private static final ReelId REEL = new ReelId("R-0101");
    private static final PersonId PERSON = new PersonId("P-07");
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    private static Occurred day(int day) {
        return Occurred.at(NOON.plus(Duration.ofDays(day)));
    }

    private static MeshPieceCommand back(int day) {
        return new MeshPieceCommand.TakeBack(
                PIECE, REEL, Length.ofMm(1465), new BandId("B-1"), "crew:P-07", PERSON, day(day));
    }

    private static MeshPieceCommand fitted(int day, long length) {
        return new MeshPieceCommand.NoteFitted(
                PIECE, REEL, Length.ofMm(length), new BandId("B-2"), new TreeId("ALDER-18"), PERSON, day(day));
    }

    private static MeshPieceCommand graded(int day, Wear wear) {
        return new MeshPieceCommand.Grade(PIECE, wear, null, "", PERSON, day(day));
    }

    private static MeshPiece after(MeshPieceCommand... commands) {
        MeshPiece piece = MeshPiece.NONE;
        for (MeshPieceCommand command : commands) {
            for (MeshPieceEvent event : piece.decide(command)) {
                piece = piece.evolve(event);
            }
        }
        return piece;
    }

    @Test
    void a_piece_is_where_it_was_last_brought() {
        MeshPiece hanging = after(back(1), fitted(3, 1400));
        MeshPiece.Where where = Objects.requireNonNull(hanging.where());
        assertThat(where.bandId()).isEqualTo(new BandId("B-2"));
        assertThat(where.place()).isNull();
        assertThat(Objects.requireNonNull(hanging.size()).length()).isEqualTo(Length.ofMm(1400));
        MeshPiece shelved = after(
                back(1), fitted(3, 1400), back(5), new MeshPieceCommand.Put(PIECE, "depot:RIVER", PERSON, day(6)));
        assertThat(Objects.requireNonNull(shelved.where()).place()).isEqualTo("depot:RIVER");
    }

    @Test
    void facts_make_the_same_piece_in_whatever_order_they_come() {
        List<MeshPieceCommand> facts = List.of(back(1), fitted(3, 1400), graded(2, Wear.GOOD), graded(4, Wear.WORN));
        MeshPiece inOrder = after(facts.toArray(MeshPieceCommand[]::new));
        for (int first = 0; first < 2; first++) {
            List<MeshPieceCommand> others = new ArrayList<>(facts);
            others.remove(first);
            for (int turn = 0; turn < others.size(); turn++) {
                java.util.Collections.rotate(others, 1);
                List<MeshPieceCommand> order = new ArrayList<>(others);
                order.add(0, facts.get(first));
                assertThat(after(order.toArray(MeshPieceCommand[]::new)))
                        .as("%s", order)
                        .isEqualTo(inOrder);
            }
        }
        assertThat(Objects.requireNonNull(inOrder.worn()).wear()).isEqualTo(Wear.WORN);
    }

    @Test
    void a_piece_nobody_knows_can_be_fitted_but_not_graded_or_put() {
        assertThat(after(fitted(1, 1400)).pieceId()).isEqualTo(PIECE);
        assertThatThrownBy(() -> MeshPiece.NONE.decide(graded(1, Wear.GOOD)))
                .isInstanceOf(MeshPieceRefused.Unknown.class)
                .hasMessageContaining("[MP-1]");
        assertThatThrownBy(() -> MeshPiece.NONE.decide(new MeshPieceCommand.Put(PIECE, "depot:RIVER", PERSON, day(1))))
                .isInstanceOf(MeshPieceRefused.Unknown.class);
    }

    @Test
    void what_comes_back_untagged_has_one_identity_for_one_work_and_reel() {
        MeshPieceId made = MeshPieceId.made("TD-1", REEL);
        assertThat(made).isEqualTo(MeshPieceId.made("TD-1", new ReelId("r-0101")));
        assertThat(made).isNotEqualTo(MeshPieceId.made("TD-2", REEL));
        assertThat(made.value()).matches("MP-[0-9A-F]{10}");
    }

    @Test
    void a_wear_nobody_knows_is_named() {
        assertThat(Wear.of(" Worn ")).isEqualTo(Wear.WORN);
        assertThatThrownBy(() -> Wear.of("rusty")).hasMessageContaining("[rusty]");
    }
}
