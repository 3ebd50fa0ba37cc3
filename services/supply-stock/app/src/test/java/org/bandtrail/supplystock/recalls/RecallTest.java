package org.bandtrail.supplystock.recalls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.junit.jupiter.api.Test;

class RecallTest {
    private static final RecallId ID = new RecallId("RC-1");
    private static final PersonId WHO = new PersonId("P-01");
    private static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));
    private static final SupplierId HOLM = new SupplierId("HOLM");
    private static final DepotId NORTH = new DepotId("NORTH");
    private static final AsideLine REEL = new AsideLine("reel", "R-1", NORTH, 50_000);

    private static final RecallEvent STARTED = new RecallEvent.Started(ID, "L 4711", HOLM, "it runs", WHO, NOW);

    private static Recall given(RecallEvent... events) {
        Recall recall = Recall.UNKNOWN;
        for (RecallEvent event : events) {
            recall = recall.evolve(event);
        }
        return recall;
    }

    private static RecallCommand.Start start(String lot, String reason) {
        return new RecallCommand.Start(ID, lot, HOLM, reason, WHO, NOW);
    }

    @Test
    void a_lot_is_recalled_with_a_reason() {
        assertThat(given().decide(start("L 4711", " it runs "))).containsExactly(STARTED);

        assertThatExceptionOfType(RecallRefused.ReasonMissing.class)
                .isThrownBy(() -> given().decide(start("L 4711", "  ")))
                .withMessageContaining("RC-1");
        assertThatExceptionOfType(RecallRefused.LotMissing.class).isThrownBy(() -> given().decide(start(" ", "why")));
        assertThatExceptionOfType(RecallRefused.RecallKnownAlready.class)
                .isThrownBy(() -> given(STARTED).decide(start("OTHER", "why")))
                .withMessageContaining("L 4711");
    }

    @Test
    void what_goes_aside_in_several_steps_is_released_as_one_when_the_recall_is_lifted() {
        AsideLine more = new AsideLine("reel", "R-1", NORTH, 8_000);
        AsideLine elsewhere = new AsideLine("reel", "R-1", new DepotId("SOUTH"), 1_000);
        Recall recall = given(
                STARTED,
                new RecallEvent.GoodsSetAside(ID, "L 4711", List.of(REEL), WHO, NOW),
                new RecallEvent.GoodsSetAside(ID, "L 4711", List.of(more, elsewhere), WHO, NOW));

        assertThat(recall.decide(new RecallCommand.Lift(ID, "tested", WHO, NOW)))
                .containsExactly(new RecallEvent.Lifted(
                        ID,
                        "L 4711",
                        "tested",
                        List.of(new AsideLine("reel", "R-1", NORTH, 58_000), elsewhere),
                        WHO,
                        NOW));
        assertThatExceptionOfType(RecallRefused.ReasonMissing.class)
                .isThrownBy(() -> recall.decide(new RecallCommand.Lift(ID, "", WHO, NOW)));
    }

    @Test
    void nothing_goes_aside_for_a_recall_that_is_not_open_and_nothing_is_lifted_twice() {
        RecallEvent lifted = new RecallEvent.Lifted(ID, "L 4711", "tested", List.of(), WHO, NOW);
        RecallCommand aside = new RecallCommand.RecordAside(ID, List.of(REEL), WHO, NOW);

        assertThat(given(STARTED).decide(aside))
                .containsExactly(new RecallEvent.GoodsSetAside(ID, "L 4711", List.of(REEL), WHO, NOW));
        assertThat(given(STARTED).decide(new RecallCommand.RecordAside(ID, List.of(), WHO, NOW)))
                .as("nothing new is no event")
                .isEmpty();
        assertThatExceptionOfType(RecallRefused.NotOpen.class).isThrownBy(() -> given().decide(aside));
        assertThatExceptionOfType(RecallRefused.NotOpen.class)
                .isThrownBy(() -> given(STARTED, lifted).decide(aside));
        assertThatExceptionOfType(RecallRefused.NotOpen.class)
                .isThrownBy(() -> given(STARTED, lifted).decide(new RecallCommand.Lift(ID, "again", WHO, NOW)));
    }
}
