package org.bandtrail.supplystock.siteshares;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.grants.GrantId;
import org.bandtrail.testing.Histories;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class SiteShareTest {
    private static final SiteId MILL = new SiteId("S-MILL");
    private static final YearMonth MAY = YearMonth.of(2026, 5);
    private static final YearMonth JULY = YearMonth.of(2026, 7);
    private static final GrantShare RIVER = new GrantShare(new GrantId("G-RIVER"), 667);
    private static final GrantShare TOWN = new GrantShare(new GrantId("G-TOWN"), 333);

    @Test
    void shares_that_add_up_begin_in_a_month_and_last_until_others_begin() {
        Payers payers = new Payers(List.of(
                new SiteShareRow("S-MILL", MAY, List.of(RIVER, TOWN)), new SiteShareRow("S-MILL", JULY, List.of())));

        assertThat(payers.of("S-MILL", MAY.minusMonths(1))).isEmpty();
        assertThat(payers.of("S-MILL", MAY.plusMonths(1))).containsExactly(RIVER, TOWN);
        assertThat(payers.of("S-MILL", JULY)).isEmpty();
        assertThat(payers.split("S-MILL", JULY, 100)).containsExactly(Map.entry(Payers.NOBODY, 100L));
    }

    @Test
    void the_odd_cent_goes_to_the_largest_remainder_and_never_away() {
        Payers payers = new Payers(List.of(new SiteShareRow("S-MILL", MAY, List.of(RIVER, TOWN))));

        // Computed by hand: 66.7 and 33.3 cents.
        assertThat(payers.split("S-MILL", MAY, 100)).isEqualTo(Map.of("G-RIVER", 67L, "G-TOWN", 33L));
        assertThat(payers.split("S-MILL", MAY, -1)).isEqualTo(Map.of("G-RIVER", -1L, "G-TOWN", 0L));
    }

    @Test
    void parts_of_any_amount_in_any_shares_add_up_to_it() {
        long tried = Histories.check(
                200,
                11,
                20,
                random -> new Case(anyShares(random), random.nextLong(-1_000_000_000_000L, 1_000_000_000_000L)),
                cases -> cases.forEach(each -> assertThat(
                                new Payers(List.of(new SiteShareRow("S-MILL", MAY, each.shares())))
                                        .split("S-MILL", MAY, each.amount()).values().stream()
                                                .mapToLong(Long::longValue)
                                                .sum())
                        .isEqualTo(each.amount())));
        assertThat(tried).isGreaterThan(1000);
    }

    private static List<GrantShare> anyShares(RandomGenerator random) {
        List<GrantShare> shares = new ArrayList<>();
        int left = SiteShare.WHOLE;
        while (left > 0) {
            int part = 1 + random.nextInt(left);
            shares.add(new GrantShare(new GrantId("G-" + shares.size()), part));
            left -= part;
        }
        return shares;
    }

    private record Case(List<GrantShare> shares, long amount) {}

    @Test
    void shares_that_do_not_add_up_are_refused_with_what_to_change() {
        assertThatExceptionOfType(SiteShareRefused.SharesDoNotAddUp.class)
                .isThrownBy(() -> SiteShare.NONE.decide(set(MAY, null, RIVER, new GrantShare(TOWN.grantId(), 300))))
                .withMessageContaining("add up to [967] thousandths")
                .withMessageContaining("by +33");
        assertThatExceptionOfType(SiteShareRefused.GrantNamedTwice.class)
                .isThrownBy(() -> SiteShare.NONE.decide(set(MAY, null, RIVER, RIVER)));
        assertThatExceptionOfType(SiteShareRefused.ShareOutOfRange.class)
                .isThrownBy(() -> SiteShare.NONE.decide(set(MAY, null, new GrantShare(TOWN.grantId(), 0))));
    }

    @Test
    void a_closed_month_keeps_its_payers() {
        assertThatExceptionOfType(SiteShareRefused.SharesOfClosedMonth.class)
                .isThrownBy(() -> SiteShare.NONE.decide(set(MAY, MAY, RIVER, TOWN)))
                .withMessageContaining("Begin in [2026-06] or later");
        assertThat(SiteShare.NONE.decide(set(MAY.plusMonths(1), MAY, RIVER, TOWN)))
                .hasSize(1);
    }

    @Test
    void the_same_shares_again_change_nothing() {
        SiteShare set = SiteShare.NONE.evolve(
                SiteShare.NONE.decide(set(MAY, null, RIVER, TOWN)).getFirst());

        assertThat(set.decide(set(MAY, null, RIVER, TOWN))).isEmpty();
    }

    private static SiteShareCommand set(YearMonth from, @Nullable YearMonth closedThrough, GrantShare... shares) {
        return new SiteShareCommand.SetShares(
                MILL,
                from,
                List.of(shares),
                closedThrough,
                new PersonId("P-30"),
                Occurred.at(Instant.parse("2026-06-02T08:00:00Z")));
    }
}
