package org.bandtrail.supplystock.spend;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import org.bandtrail.supplystock.ledger.LedgerOnPostgres;
import org.junit.jupiter.api.Test;

/** Where what is missing belongs, on a real PostgreSQL. */
class LostCostsTest {
    private static final LedgerOnPostgres BOOKS = new LedgerOnPostgres("lost_costs");

    private static void paid(String period, String account, String site, String what, String person, long minor) {
        BOOKS.jdbc.sql("""
                        INSERT INTO ledger_account (period, account, site_id, tree_id, material, kind, currency, what,
                            person_id, crew_id, quantity, minor)
                        VALUES (?, ?, ?, '', 'TAPE-1', 'TAPE', 'USD', ?, ?, '', 0, ?)""").params(period, account, site, what, person, minor).update();
    }

    @Test
    void what_a_person_missed_belongs_to_the_one_site_of_the_month_and_else_to_none() {
        BOOKS.rolledBack(() -> {
            paid("2026-05", "site:MILL", "MILL", "fitted", "P-1", 100);
            paid("2026-05", "site:MILL", "MILL", "fitted", "P-2", 100);
            paid("2026-05", "site:PARK", "PARK", "fitted", "P-2", 100);
            paid("2026-05", "written-off", "", "written off", "P-1", 7);
            paid("2026-05", "written-off", "", "written off", "P-2", 11);
            paid("2026-06", "written-off", "", "written off", "P-1", 13);
            paid("2026-05", "written-down", "", "written down", "P-1", 17);

            var lost = new LostCosts(BOOKS.jdbc).within(Months.of(YearMonth.of(2026, 5), YearMonth.of(2026, 6)));

            assertThat(lost)
                    .extracting(each -> each.month() + " " + each.siteId() + " " + each.outcome() + " " + each.minor())
                    .containsExactlyInAnyOrder(
                            "2026-05 MILL MISSING 7",
                            "2026-05  MISSING 11",
                            "2026-06  MISSING 13",
                            "2026-05  WRITTEN_DOWN 17");
        });
    }
}
