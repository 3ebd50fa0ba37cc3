package org.bandtrail.supplystock.transfers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;

/** A transfer is sent once and ends once. */
class TransferTest {
    private static final TransferId ID = new TransferId("TR-1");
    private static final Place NORTH = Place.depot(new DepotId("NORTH"));
    private static final Place SOUTH = Place.depot(new DepotId("SOUTH"));
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
    private static final List<TransferLine> LINES = List.of(new TransferLine("reel", "R-1", 50_000));

    @Test
    void what_was_sent_arrives_once() {
        Transfer sent = after(Transfer.UNKNOWN, send(SOUTH, LINES));
        Transfer arrived = after(sent, new TransferCommand.Arrive(ID, LINES, KEEPER, NOW));

        assertThat(arrived.ended()).isTrue();
        assertThatExceptionOfType(TransferRefused.TransferEnded.class)
                .isThrownBy(() -> arrived.decide(new TransferCommand.Arrive(ID, LINES, KEEPER, NOW)));
        assertThatExceptionOfType(TransferRefused.TransferSentAlready.class)
                .isThrownBy(() -> arrived.decide(send(SOUTH, LINES)));
    }

    @Test
    void a_transfer_has_something_on_it_and_goes_somewhere_else() {
        assertThatExceptionOfType(TransferRefused.TransferEmpty.class)
                .isThrownBy(() -> Transfer.UNKNOWN.decide(send(SOUTH, List.of())));
        assertThatExceptionOfType(TransferRefused.TransferNowhere.class)
                .isThrownBy(() -> Transfer.UNKNOWN.decide(send(NORTH, LINES)));
    }

    @Test
    void what_has_not_arrived_can_be_called_off_for_a_reason() {
        Transfer sent = after(Transfer.UNKNOWN, send(SOUTH, LINES));

        assertThatExceptionOfType(TransferRefused.ReasonMissing.class)
                .isThrownBy(() -> sent.decide(new TransferCommand.CallOff(ID, " ", KEEPER, NOW)));
        assertThat(after(sent, new TransferCommand.CallOff(ID, "truck broke down", KEEPER, NOW))
                        .ended())
                .isTrue();
        assertThatExceptionOfType(TransferRefused.TransferUnknown.class)
                .isThrownBy(() -> Transfer.UNKNOWN.decide(new TransferCommand.CallOff(ID, "x", KEEPER, NOW)));
    }

    private static Transfer after(Transfer transfer, TransferCommand command) {
        return transfer.evolve(transfer.decide(command).getFirst());
    }

    private static TransferCommand send(Place to, List<TransferLine> lines) {
        return new TransferCommand.Send(ID, NORTH, to, new PersonId("P-08"), lines, KEEPER, NOW);
    }
}
