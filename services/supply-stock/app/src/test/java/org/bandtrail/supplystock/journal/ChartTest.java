package org.bandtrail.supplystock.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.periods.BooksId;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ChartTest {
    static final List<ChartAccount> GENERAL = List.of(
            new ChartAccount("stock", "1310", "Material in stock"),
            new ChartAccount("site", "5200", "Material used"),
            new ChartAccount("written-off", "5290", "Material lost"),
            new ChartAccount("written-down", "5295", "Material written down"),
            new ChartAccount("slit", "1390", "Slitting"),
            new ChartAccount("supplier", "2050", "Received, not invoiced"));

    private static final YearMonth MAY = YearMonth.of(2026, 5);

    @Test
    void the_general_six_are_enough_and_any_of_them_is_needed() {
        assertThat(Chart.EMPTY.decide(map(MAY, null, GENERAL))).hasSize(1);
        for (ChartAccount missing : GENERAL) {
            List<ChartAccount> five = new ArrayList<>(GENERAL);
            five.remove(missing);
            assertThatExceptionOfType(ChartRefused.AccountsMissing.class)
                    .isThrownBy(() -> Chart.EMPTY.decide(map(MAY, null, five)))
                    .withMessageContaining("[" + missing.ours() + "]");
        }
    }

    @Test
    void what_is_none_of_ours_or_incomplete_or_named_twice_is_refused_by_name() {
        assertThatExceptionOfType(ChartRefused.AccountNotOurs.class)
                .isThrownBy(() -> Chart.EMPTY.decide(map(MAY, null, and(new ChartAccount("petty cash", "1", "x")))))
                .withMessageContaining("[petty cash]");
        assertThatExceptionOfType(ChartRefused.AccountIncomplete.class)
                .isThrownBy(() -> Chart.EMPTY.decide(map(MAY, null, and(new ChartAccount("site:S-1", " ", "x")))));
        assertThatExceptionOfType(ChartRefused.AccountMappedTwice.class)
                .isThrownBy(() -> Chart.EMPTY.decide(map(MAY, null, and(new ChartAccount("stock", "9", "x")))));
    }

    @Test
    void a_closed_month_keeps_its_accounts_but_a_first_mapping_may_reach_back() {
        assertThat(Chart.EMPTY.decide(map(MAY, MAY, GENERAL))).hasSize(1);

        Chart mapped = new Chart(Set.of(MAY));
        assertThatExceptionOfType(ChartRefused.AccountsOfClosedMonth.class)
                .isThrownBy(() -> mapped.decide(map(MAY, MAY, GENERAL)))
                .withMessageContaining("Begin in [2026-06] or later");
        assertThat(mapped.decide(map(MAY.plusMonths(1), MAY, GENERAL))).hasSize(1);
    }

    private static List<ChartAccount> and(ChartAccount more) {
        List<ChartAccount> accounts = new ArrayList<>(GENERAL);
        accounts.add(more);
        return accounts;
    }

    private static ChartCommand map(YearMonth from, @Nullable YearMonth closedThrough, List<ChartAccount> accounts) {
        return new ChartCommand.MapAccounts(
                BooksId.MAIN,
                from,
                accounts,
                closedThrough,
                new PersonId("P-30"),
                Occurred.at(Instant.parse("2026-06-02T08:00:00Z")));
    }
}
