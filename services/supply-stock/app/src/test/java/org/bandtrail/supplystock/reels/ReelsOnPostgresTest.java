package org.bandtrail.supplystock.reels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.bandtrail.supplystock.reels.ReelSamples.*;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.holdings.Place;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@OnPostgres
class ReelsOnPostgresTest {
    @Autowired
    Work work;

    @Autowired
    Commands commands;

    @Autowired
    Projectors projectors;

    @Autowired
    ReelBalances balances;

    @Autowired
    JdbcClient jdbc;

    @Test
    void a_reel_received_and_handed_out_is_with_the_person() {
        ReelId reel = new ReelId("R-100");
        send(receive(reel, "50 m", 1800), new ReelCommand.HandOut(reel, KIT, DEPOT, ANNA, KEEPER, NOW));

        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
        ReelBalance balance = balances.one("R-100").orElseThrow();
        assertThat(balance.withCrewMm()).isEqualTo(50_000);
        assertThat(balance.place()).isEqualTo("crew:P-07");
        assertThat(balances.whole("R-100").orElseThrow().history())
                .extracting(line -> line.what())
                .containsExactly("received", "handed out");
    }

    @Test
    void work_that_fails_after_its_commands_leaves_nothing_in_store_or_cache() {
        ReelId reel = new ReelId("R-200");
        send(receive(reel, "50 m", 1800));

        assertThatExceptionOfType(IllegalStateException.class)
                .isThrownBy(() -> work.inOneTransaction(() -> {
                    commands.send(new ReelCommand.HandOut(reel, KIT, DEPOT, ANNA, KEEPER, NOW));
                    throw new IllegalStateException("the rest of the work fails");
                }));

        assertThat(events(reel)).isEqualTo(1);
        send(new ReelCommand.HandOut(reel, KIT, DEPOT, BORIS, KEEPER, NOW));
        assertThat(events(reel)).isEqualTo(2);
    }

    @Test
    void eight_people_who_want_the_same_reel_at_once_do_not_get_it_twice() throws Exception {
        ReelId reel = new ReelId("R-300");
        send(receive(reel, "50 m", 1800));

        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<Boolean>> answers = IntStream.range(0, 8)
                    .mapToObj(i -> threads.submit(() -> {
                        try {
                            send(new ReelCommand.HandOut(reel, KIT, DEPOT, new PersonId("P-" + i), KEEPER, NOW));
                            return true;
                        } catch (ReelRefused.ReelNotInDepot refused) {
                            return false;
                        }
                    }))
                    .toList();
            int granted = 0;
            for (Future<Boolean> answer : answers) {
                granted += answer.get() ? 1 : 0;
            }
            assertThat(granted).isEqualTo(1);
        }
        assertThat(events(reel)).isEqualTo(2);
    }

    @Test
    void a_rebuilt_balance_is_the_same_as_the_old_one() {
        ReelId reel = new ReelId("R-400");
        send(
                receive(reel, "50 m", 1800),
                new ReelCommand.HandOut(reel, KIT, DEPOT, ANNA, KEEPER, NOW),
                new ReelCommand.Return(reel, ANNA, DEPOT, receive("48 m", 1).length(), KEEPER, NOW));
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
        ReelBalance.Whole before = balances.whole("R-400").orElseThrow();

        projectors.rebuild("reel-balance");

        assertThat(balances.whole("R-400").orElseThrow()).isEqualTo(before);
        send(new ReelCommand.Settle(reel, Place.missing(ANNA), "dropped in the river", KEEPER, NOW));
        assertThat(projectors.caughtUp(Duration.ofSeconds(10))).isTrue();
        assertThat(balances.one("R-400").orElseThrow().writtenOffMm()).isEqualTo(2_000);
    }

    @Test
    void stored_events_carry_our_names_and_readable_json() {
        ReelId reel = new ReelId("R-500");
        send(receive(reel, "50 m", 1800));

        assertThat(jdbc.sql("SELECT payload_type FROM domain_event_entry WHERE aggregate_identifier = 'reel/R-500'")
                        .query(String.class)
                        .single())
                .isEqualTo("reel.received");
        assertThat(jdbc.sql("SELECT convert_from(payload, 'UTF8') FROM domain_event_entry"
                                + " WHERE aggregate_identifier = 'reel/R-500'")
                        .query(String.class)
                        .single())
                .contains("\"length\":50000", "\"target\":\"depot:NORTH\"");
    }

    private void send(ReelCommand... wanted) {
        work.inOneTransaction(() -> {
            List.of(wanted).forEach(commands::send);
            return wanted.length;
        });
    }

    private long events(ReelId reel) {
        return jdbc.sql("SELECT count(*) FROM domain_event_entry WHERE aggregate_identifier = ?")
                .param("reel/" + reel)
                .query(Long.class)
                .single();
    }
}
