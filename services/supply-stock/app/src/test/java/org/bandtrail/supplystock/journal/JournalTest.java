package org.bandtrail.supplystock.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JournalTest {
    private static final YearMonth MAY = YearMonth.of(2026, 5);
    private static final List<Posting> POSTINGS = List.of(
            new Posting("USD", "fitted", "site:S-FORD", 1200),
            new Posting("USD", "fitted", "site:S-MILL", 3300),
            new Posting("USD", "fitted", "stock:TAPE", -4500),
            new Posting("USD", "received", "stock:TAPE", 10_000),
            new Posting("USD", "received", "supplier", -10_000));

    @Test
    void each_posting_finds_its_own_account_or_that_of_its_kind() {
        List<ChartAccount> accounts = new ArrayList<>(ChartTest.GENERAL);
        accounts.add(new ChartAccount("site:S-MILL", "5210", "Used at the mill, mostly"));

        assertThat(Journal.of(MAY, true, POSTINGS, accounts).exportable().lines())
                .extracting(Journal.Line::account)
                .containsExactly("5200", "5210", "1310", "1310", "2050");
    }

    @Test
    void the_csv_file_reads_as_a_bookkeeper_expects() {
        List<ChartAccount> accounts = new ArrayList<>(ChartTest.GENERAL);
        accounts.add(new ChartAccount("site:S-MILL", "5210", "Mill, \"pond\""));
        accounts.add(new ChartAccount("site:S-FORD", "5211", "=1+1"));

        String csv = new String(JournalFile.csv(Journal.of(MAY, true, POSTINGS, accounts)), StandardCharsets.UTF_8);

        assertThat(csv.lines())
                .startsWith(
                        "month,line,what,account,account_name,our_account,currency,debit,credit",
                        "2026-05,1,fitted,5211,'=1+1,site:S-FORD,USD,12.00,0.00",
                        "2026-05,2,fitted,5210,\"Mill, \"\"pond\"\"\",site:S-MILL,USD,33.00,0.00",
                        "2026-05,3,fitted,1310,Material in stock,stock:TAPE,USD,0.00,45.00");
    }

    /** ISO 4217 minor units: JPY 0, USD 2, KWD 3, CLF 4 (check values, F5, from memory there). */
    @ParameterizedTest
    @CsvSource({"JPY,1234567", "USD,12345.67", "KWD,1234.567", "CLF,123.4567"})
    void amounts_have_as_many_decimals_as_their_currency(String currency, String written) {
        List<Posting> postings = List.of(
                new Posting(currency, "received", "stock:MESH", 1_234_567),
                new Posting(currency, "received", "supplier", -1_234_567));

        Journal journal = Journal.of(MAY, true, postings, ChartTest.GENERAL).exportable();

        assertThat(journal.lines().getFirst().debit().toPlainString()).isEqualTo(written);
        assertThat(journal.lines().getLast().credit().toPlainString()).isEqualTo(written);
    }

    @Test
    void a_journal_that_does_not_balance_is_not_exported() {
        List<Posting> postings = List.of(
                new Posting("USD", "received", "stock:TAPE", 100), new Posting("USD", "received", "supplier", -99));

        assertThatExceptionOfType(ChartRefused.JournalUnbalanced.class)
                .isThrownBy(
                        () -> Journal.of(MAY, true, postings, ChartTest.GENERAL).exportable())
                .withMessageContaining("debits less credits are [1] minor units of [USD]");
    }

    @Test
    void a_posting_without_an_account_is_named_and_nothing_is_exported() {
        assertThatExceptionOfType(ChartRefused.PostingUnmapped.class)
                .isThrownBy(() -> Journal.of(MAY, true, POSTINGS, List.of()).exportable())
                .withMessageContaining("[site:S-FORD, site:S-MILL, stock:TAPE, supplier]");
    }

    @Test
    void the_same_journal_is_the_same_file_to_the_byte_because_no_file_says_when_it_was_written() throws IOException {
        Journal journal = Journal.of(MAY, true, POSTINGS, ChartTest.GENERAL);
        byte[] file = JournalFile.xlsx(journal);

        assertThat(JournalFile.xlsx(journal)).isEqualTo(file);
        assertThat(JournalFile.csv(journal)).isEqualTo(JournalFile.csv(journal));
        int parts = 0;
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                parts++;
                assertThat(part.getTimeLocal()).as(part.getName()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
                if (part.getName().equals("docProps/core.xml")) {
                    assertThat(new String(zip.readAllBytes(), StandardCharsets.UTF_8))
                            .contains(">1980-01-01T00:00:00Z<")
                            .doesNotContain(">20");
                }
            }
        }
        assertThat(parts).isGreaterThan(5);
    }
}
