package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.EventLog;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BandId;
import org.bandtrail.siteinstalls.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@OnPostgres
class BandsOnPostgresTest {
    private static final List<String> BAND_EVENTS = List.of("band.fitted", "band.pieces-replaced", "band.taken-down");
    private final Work work;
    private final Commands commands;
    private final Projectors projectors;
    private final Bands bands;
    private final BandProjection projection;
    private final EventLog log;

    @Autowired
    BandsOnPostgresTest(
            Work work, Commands commands, Projectors projectors, Bands bands, BandProjection projection, EventLog log) {
        this.work = work;
        this.commands = commands;
        this.projectors = projectors;
        this.bands = bands;
        this.projection = projection;
        this.log = log;
    }

    private BandView.Whole after(String band, BandCommand... facts) {
        work.inOneTransaction(() -> {
            List.of(facts).forEach(commands::send);
            return facts.length;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
        return bands.whole(new BandId(band)).orElseThrow();
    }

    private static BandCommand fit(String band) {
        Fitting f = BandSamples.FITTING;
        Fitting named = new Fitting(
                new BandId(band),
                f.treeId(),
                f.siteId(),
                f.crewId(),
                f.personId(),
                f.girth(),
                f.height(),
                f.tape(),
                f.mesh(),
                f.fasteners());
        return BandSamples.fit(named, BandSamples.BOOKS, BandSamples.NOON);
    }

    private static BandCommand takeDown(String band, int days) {
        return new BandCommand.NoteTakenDown(
                new BandId(band),
                "TD-9",
                null,
                null,
                BandSamples.PERSON,
                org.bandtrail.kernel.Occurred.at(BandSamples.NOON.plus(Duration.ofDays(days))));
    }

    @Test
    void a_fitted_band_has_its_row_and_a_teardown_takes_it_down() {
        BandView.Whole up = after("PG-1", fit("PG-1"));
        assertThat(up.band().state()).isEqualTo("up");
        assertThat(up.band().meshMm()).isEqualTo(1465);
        assertThat(up.band().pieces()).isEqualTo(9);
        BandView.Whole down = after("PG-1", takeDown("PG-1", 30));
        assertThat(down.band().state()).isEqualTo("down");
        assertThat(down.history()).extracting(BandView.Step::what).containsExactly("taken down", "fitted");
    }

    @Test
    void a_teardown_told_before_the_fitting_is_kept_and_the_fitting_completes_the_row() {
        BandView.Whole early = after("PG-2", takeDown("PG-2", 30));
        assertThat(early.band().state()).isEqualTo("down");
        assertThat(early.band().treeId()).isNull();
        BandView.Whole complete = after("PG-2", fit("PG-2"));
        assertThat(complete.band().state()).isEqualTo("down");
        assertThat(complete.band().treeId()).isEqualTo("ALDER-17");
        assertThat(complete.band().girthMm()).isEqualTo(1234);
    }

    @Test
    void facts_about_one_band_that_come_at_the_same_moment_are_all_kept() throws Exception {
        try (var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            List<Future<Integer>> told = IntStream.range(0, 6)
                    .mapToObj(day -> threads.submit(() -> work.inOneTransaction(() -> {
                        commands.send(takeDown("PG-5", day));
                        return day;
                    })))
                    .toList();
            for (Future<Integer> each : told) {
                assertThat(each.get()).isNotNegative();
            }
        }
        assertThat(after("PG-5", fit("PG-5")).history()).hasSize(7);
    }

    @Test
    void a_page_applied_twice_changes_nothing() {
        BandView.Whole once = after("PG-3", fit("PG-3"), takeDown("PG-3", 3));
        List<StoredEvent> page = log.after(0, BAND_EVENTS, 100_000).events().stream()
                .filter(stored -> stored.aggregate().equals("band/PG-3"))
                .toList();
        assertThat(page).hasSize(2);
        work.inOneTransaction(() -> {
            projection.apply(page);
            return page.size();
        });
        assertThat(bands.whole(new BandId("PG-3"))).contains(once);
    }

    @Test
    void a_rebuilt_table_is_the_same_as_the_old_one() {
        BandView.Whole before = after("PG-4", takeDown("PG-4", 5), fit("PG-4"));
        projectors.rebuild("band");
        assertThat(bands.whole(new BandId("PG-4"))).contains(before);
        assertThat(bands.page(new BandFilter(null, null, "down", null, "PG-4", null), null, 10))
                .containsExactly(before.band());
    }
}
