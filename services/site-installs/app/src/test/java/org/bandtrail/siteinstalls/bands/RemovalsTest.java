package org.bandtrail.siteinstalls.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bandtrail.siteinstalls.bands.BandSamples.FITTING;
import static org.bandtrail.siteinstalls.bands.BandSamples.NOON;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.OnPostgres;
import org.bandtrail.siteinstalls.bands.BandCommand.NoteTakenDown;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The alarm, and which findings are still open. The policy of the samples takes bands off after 180 days. */
@OnPostgres
class RemovalsTest {
    private final Work work;
    private final Commands commands;
    private final Projectors projectors;
    private final Bands bands;
    private final Removals removals;

    @Autowired
    RemovalsTest(Work work, Commands commands, Projectors projectors, Bands bands, Removals removals) {
        this.work = work;
        this.commands = commands;
        this.projectors = projectors;
        this.bands = bands;
        this.removals = removals;
    }

    private void tell(BandCommand... facts) {
        work.inOneTransaction(() -> {
            List.of(facts).forEach(commands::send);
            return facts.length;
        });
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
    }

    private static BandCommand fit(String band, String tree, String site, Books books, int daysLater) {
        Fitting fitting = new Fitting(
                new BandId(band),
                new TreeId(tree),
                new SiteId(site),
                FITTING.crewId(),
                FITTING.personId(),
                FITTING.girth(),
                FITTING.height(),
                FITTING.tape(),
                FITTING.mesh(),
                FITTING.fasteners());
        return BandSamples.fit(fitting, books, NOON.plus(Duration.ofDays(daysLater)));
    }

    private static BandCommand takeDown(String band, int days) {
        return new NoteTakenDown(
                new BandId(band),
                "TD-" + band,
                null,
                null,
                BandSamples.PERSON,
                Occurred.at(NOON.plus(Duration.ofDays(days))));
    }

    private LocalDate lastDayOf(String band) {
        return Objects.requireNonNull(
                bands.whole(new BandId(band)).orElseThrow().band().mustRemoveBy());
    }

    @Test
    void a_band_is_near_from_the_first_day_of_notice_and_past_the_day_after_its_last() {
        tell(fit("RM-1", "RM-TREE-1", "RM-SITE", BandSamples.BOOKS, 0));
        LocalDate last = lastDayOf("RM-1");

        assertThat(removals.alarm("RM-SITE", null, last.minusDays(15)))
                .extracting(Removals.Alarm::past, Removals.Alarm::near, Removals.Alarm::first)
                .containsExactly(0L, 0L, null);
        assertThat(removals.alarm("RM-SITE", null, last.minusDays(14)))
                .extracting(Removals.Alarm::past, Removals.Alarm::near, Removals.Alarm::first)
                .containsExactly(0L, 1L, last);
        assertThat(removals.alarm(null, "RM-TREE-1", last))
                .extracting(Removals.Alarm::past, Removals.Alarm::near)
                .containsExactly(0L, 1L);
        assertThat(removals.alarm(null, "RM-TREE-1", last.plusDays(1)))
                .extracting(Removals.Alarm::past, Removals.Alarm::near)
                .containsExactly(1L, 0L);
    }

    @Test
    void the_list_begins_with_what_must_come_off_first_and_continues_behind_its_cursor() {
        tell(
                fit("RL-2", "RL-TREE-2", "RL-SITE", BandSamples.BOOKS, 0),
                fit("RL-1", "RL-TREE-1", "RL-SITE", BandSamples.BOOKS, 3),
                fit("RL-3", "RL-TREE-3", "RL-SITE", BandSamples.BOOKS, 3),
                fit("RL-4", "RL-TREE-4", "RL-SITE", BandSamples.BOOKS, 0),
                takeDown("RL-4", 5));
        BandFilter due = new BandFilter("RL-SITE", null, null, null, null, lastDayOf("RL-1"));

        List<BandView> first = bands.page(due, null, 2);
        assertThat(first).extracting(BandView::bandId).containsExactly("RL-2", "RL-1");
        assertThat(bands.page(due, due.next(first.getLast()), 2))
                .extracting(BandView::bandId)
                .containsExactly("RL-3");
        assertThat(bands.page(new BandFilter("RL-SITE", null, null, null, null, lastDayOf("RL-2")), null, 9))
                .extracting(BandView::bandId)
                .containsExactly("RL-2");
    }

    @Test
    void a_list_is_narrowed_by_tree_device_and_text_together() {
        tell(
                fit("RN-1", "RN-TREE", "RN-SITE", BandSamples.BOOKS, 0),
                fit("RN-2", "RN-TREE", "RN-SITE", BandSamples.BOOKS, 1));
        assertThat(bands.page(new BandFilter("RN-SITE", "RN-TREE", "up", "sticky-band", "RN-2", null), null, 9))
                .extracting(BandView::bandId)
                .containsExactly("RN-2");
        assertThat(bands.page(new BandFilter("RN-SITE", null, null, "funnel-trap", null, null), null, 9))
                .isEmpty();
    }

    @Test
    void two_bands_on_one_tree_are_open_until_one_comes_down_and_the_finding_stays_stored() {
        Books banded = new Books(
                true,
                BandSamples.BOOKS.tree(),
                List.of(new BandId("RT-1")),
                null,
                BandSamples.BOOKS.tapeReel(),
                BandSamples.BOOKS.meshReel(),
                BandSamples.BOOKS.policy(),
                BandSamples.BOOKS.device());
        tell(fit("RT-1", "RT-TREE", "RT-SITE", BandSamples.BOOKS, 0), fit("RT-2", "RT-TREE", "RT-SITE", banded, 1));
        assertThat(flag("RT-2").open()).isTrue();

        tell(takeDown("RT-1", 9));

        assertThat(flag("RT-2").open()).isFalse();
        assertThat(flag("RT-2").message()).contains("RT-1");
    }

    private BandView.Flag flag(String band) {
        return bands.whole(new BandId(band)).orElseThrow().band().flags().stream()
                .filter(flag -> flag.flag().equals("tree-already-banded"))
                .findFirst()
                .orElseThrow();
    }
}
