package org.bandtrail.supplystock.depots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.junit.jupiter.api.Test;

class DepotTest {
    @Test
    void a_depot_is_opened_once() {
        Depot open =
                Depot.UNKNOWN.evolve(Depot.UNKNOWN.decide(open("North yard")).getFirst());

        assertThat(open.name()).isEqualTo("North yard");
        assertThatExceptionOfType(DepotRefused.DepotOpenAlready.class)
                .isThrownBy(() -> open.decide(open("Other yard")))
                .withMessage("Depot [NORTH] is open already as North yard. Choose another identity.");
    }

    @Test
    void a_depot_needs_a_name() {
        assertThatExceptionOfType(DepotRefused.DepotWithoutName.class)
                .isThrownBy(() -> Depot.UNKNOWN.decide(open(" ")));
    }

    private static DepotCommand open(String name) {
        return new DepotCommand.Open(
                new DepotId("NORTH"), name, new PersonId("P-01"), Occurred.at(Instant.parse("2026-04-01T08:00:00Z")));
    }
}
