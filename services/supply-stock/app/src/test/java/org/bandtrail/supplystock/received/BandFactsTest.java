package org.bandtrail.supplystock.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.bandtrail.inspections.contract.v1.BandTakenDown;
import org.bandtrail.inspections.contract.v1.BandVisited;
import org.bandtrail.siteinstalls.contract.v1.BandFitted;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.bandwork.BandWork;
import org.bandtrail.supplystock.bandwork.SiteWork;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A published band becomes days and a published count becomes insects; other answers of a visit are no zero. */
@OnPostgres
class BandFactsTest {
    private static final Instant FITTED = Instant.parse("2026-06-01T00:00:00Z");
    private static final Instant DOWN = Instant.parse("2026-06-05T00:00:00Z");

    @Autowired
    BandFacts facts;

    @Autowired
    BandWork work;

    @Test
    void a_fitted_read_and_taken_down_band_is_four_band_days_and_seven_insects() {
        facts.hear(new BandFitted(
                "BF-1", "BF-T", "BF-S", "C-1", "P-07", 900, 1200, "R-1", 980, null, 0, null, 0, List.of(), FITTED,
                FITTED, "P-07"));
        facts.hear(visit("BF-V1", "read", Map.of("adult", 7L)));
        facts.hear(visit("BF-V2", "not-read", Map.of()));
        facts.hear(down(DOWN, false));
        facts.hear(down(FITTED, true));

        assertThat(work.bySite(FITTED, DOWN.plusSeconds(SiteWork.DAY)))
                .contains(new SiteWork("BF-S", 1, 1, 4 * SiteWork.DAY, 7, 0));
    }

    private static BandVisited visit(String id, String answer, Map<String, Long> catches) {
        return new BandVisited(
                id, "BF-1", "BF-T", "BF-S", "C-1", "P-07", answer, null, false, catches, null, null, FITTED, FITTED,
                "P-07");
    }

    private static BandTakenDown down(Instant at, boolean settlesEarlier) {
        return new BandTakenDown(
                "BF-D", "BF-1", "BF-T", "BF-S", "C-1", "P-07", null, settlesEarlier, List.of(), at, at, "P-07");
    }
}
