package org.bandtrail.supplystock.bandwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.bandtrail.supplystock.OnPostgres;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@OnPostgres
class BandWorkTest {
    private static final Instant MAY = Instant.parse("2026-05-01T00:00:00Z");
    private static final Instant JUNE = Instant.parse("2026-06-01T00:00:00Z");
    private static final Instant JULY = Instant.parse("2026-07-01T00:00:00Z");

    @Autowired
    BandWork work;

    @Test
    void a_band_counts_the_days_it_hung_within_the_month_and_no_others() {
        fitted("BW-1", "BW-T1", "BW-A", "2026-05-30T00:00:00Z");
        work.takenDown("BW-1", Instant.parse("2026-06-03T12:00:00Z"));
        fitted("BW-2", "BW-T1", "BW-A", "2026-06-30T00:00:00Z");

        // May: 30 and 31. June: 1, 2 and half of 3 for the first, the 30th for the second, which hangs on.
        assertThat(of("BW-A", MAY, JUNE)).isEqualTo(new SiteWork("BW-A", 1, 1, 2 * SiteWork.DAY, 0, 0));
        assertThat(of("BW-A", JUNE, JULY)).isEqualTo(new SiteWork("BW-A", 1, 2, 7 * SiteWork.DAY / 2, 0, 0));
    }

    @Test
    void insects_are_counted_once_without_egg_masses_and_lower_bounds_are_told() {
        fitted("BW-3", "BW-T3", "BW-B", "2026-06-01T00:00:00Z");
        Map<String, Long> catches = Map.of("instar-4", 14L, "adult", 2L, "egg-mass", 5L);
        Instant at = Instant.parse("2026-06-10T08:00:00Z");
        work.counted("BW-V1", "BW-3", null, at, catches, true);
        work.counted("BW-V1", "BW-3", null, at, catches, true);

        SiteWork june = of("BW-B", JUNE, JULY);
        assertThat(june.insects()).isEqualTo(16);
        assertThat(june.lowerBounds()).isEqualTo(1);
    }

    @Test
    void an_end_heard_before_its_beginning_is_kept_and_a_band_of_no_time_has_no_days() {
        work.takenDown("BW-4", Instant.parse("2026-06-02T00:00:00Z"));
        fitted("BW-4", "BW-T4", "BW-C", "2026-06-01T00:00:00Z");
        fitted("BW-5", "BW-T5", "BW-C", "2026-06-10T00:00:00Z");
        work.takenDown("BW-5", Instant.parse("2026-06-09T00:00:00Z"));

        assertThat(of("BW-C", JUNE, JULY).bandSeconds()).isEqualTo(SiteWork.DAY);
    }

    private void fitted(String band, String tree, String site, String at) {
        work.fitted(new BandWork.Fitted(band, tree, site, "C-1", "P-07", Instant.parse(at)));
    }

    private SiteWork of(String site, Instant from, Instant until) {
        List<SiteWork> found = work.bySite(from, until).stream()
                .filter(each -> each.siteId().equals(site))
                .toList();
        assertThat(found).hasSize(1);
        return found.getFirst();
    }
}
