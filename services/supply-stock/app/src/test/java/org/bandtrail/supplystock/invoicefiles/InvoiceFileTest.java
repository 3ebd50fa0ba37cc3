package org.bandtrail.supplystock.invoicefiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Objects;
import org.bandtrail.kernel.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InvoiceFileTest {

    /** OpenPEPPOL/peppol-bis-invoice-3, rules/examples/base-example.xml: figures of that file, read at 81497bf. */
    @Test
    void the_figures_of_the_peppol_base_example_come_out_to_the_cent() {
        SupplierInvoice invoice = read("base-figures.xml");

        assertThat(InvoiceArithmetic.check(invoice)).isEmpty();
        SupplierInvoice.Totals again = InvoiceArithmetic.totals(
                "EUR",
                invoice.lines(),
                invoice.adjustments(),
                TaxSums.taxes("EUR", invoice.lines(), invoice.adjustments()),
                Money.zero("EUR"),
                Money.zero("EUR"));
        assertThat(again.lines()).isEqualTo(Money.of(1_300_00, "EUR"));
        assertThat(again.charges()).isEqualTo(Money.of(25_00, "EUR"));
        assertThat(again.beforeTax()).isEqualTo(Money.of(1_325_00, "EUR"));
        assertThat(again.tax()).isEqualTo(Money.of(331_25, "EUR"));
        assertThat(again.payable()).isEqualTo(Money.of(1_656_25, "EUR"));
    }

    /**
     * oasis-tcs/ubl, raw/xml/UBL-Invoice-2.1-Example.xml: figures of that file, read at 7e1af45. It is older than EN
     * 16931: its first line leaves its own allowance and charge out, and its sum with tax holds the rounding already.
     */
    @Test
    void the_figures_of_the_ubl_example_come_out_but_for_two_sums_of_an_older_rule() {
        SupplierInvoice invoice = read("ubl-figures.xml");

        assertThat(InvoiceArithmetic.check(invoice))
                .extracting(InvoiceArithmetic.Finding::sentence)
                .containsExactly(
                        "Line 1 says EUR 1273.00; reckoned again it is EUR 1271.00.",
                        "The sum with tax says EUR 1729.00; reckoned again it is EUR 1728.70.");
        assertThat(invoice.totals().payable()).isEqualTo(Money.of(729_00, "EUR"));
        assertThat(invoice.totals().lines()).isEqualTo(Money.of(1_436_50, "EUR"));
    }

    @Test
    void what_matters_for_the_match_is_read_from_a_credit_note() {
        SupplierInvoice note = read("credit-note.xml");

        assertThat(note.kind()).isEqualTo(InvoiceKind.CREDIT_NOTE);
        assertThat(note.credits()).isEqualTo("R-1003");
        assertThat(note.order()).isEqualTo("PO-7");
        assertThat(note.issuedOn()).isEqualTo(LocalDate.parse("2026-05-20"));
        assertThat(note.supplierNames()).contains("Reed and Rush Supply", "S-REED");
        SupplierInvoice.Line line = note.lines().getFirst();
        assertThat(line.unit()).isEqualTo("XRL");
        assertThat(line.sellersItem()).isEqualTo("RR-11");
        assertThat(line.order()).isEqualTo("PO-7");
        assertThat(line.orderLine()).isEqualTo("1");
        assertThat(InvoiceArithmetic.check(note)).isEmpty();
    }

    @Test
    void a_sum_that_was_changed_by_one_cent_is_found() {
        String changed = text("base-figures.xml").replace(">1656.25</cbc:PayableAmount", ">1656.26</cbc:PayableAmount");

        assertThat(InvoiceArithmetic.check(InvoiceFile.read(bytes(changed))))
                .extracting(InvoiceArithmetic.Finding::what)
                .containsExactly("The payable sum");
    }

    @Test
    void missing_elements_and_foreign_currencies_are_all_named_at_once() {
        String broken = text("base-figures.xml")
                .replace("<cbc:IssueDate>2026-05-20</cbc:IssueDate>", "")
                .replace("<cbc:PriceAmount currencyID=\"EUR\">400<", "<cbc:PriceAmount currencyID=\"EUR\">four<")
                .replace("currencyID=\"EUR\">331.25", "currencyID=\"SEK\">331.25");

        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> InvoiceFile.read(bytes(broken)))
                .withMessageContaining("IssueDate: Nothing is written here.")
                .withMessageContaining("line 1/PriceAmount: [four] is not a number.")
                .withMessageContaining("[SEK] is not the document's currency EUR.")
                .satisfies(refused -> assertThat(refused.problems()).hasSizeGreaterThan(2));
    }

    @Test
    void an_amount_with_more_decimals_than_its_currency_has_is_not_rounded_away() {
        String fine = text("base-figures.xml").replace(">2800<", ">2800.001<");

        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> InvoiceFile.read(bytes(fine)))
                .withMessageContaining("[2800.001] is no amount of EUR, which has 2 decimals.");
    }

    /** ISO 4217 minor units: 0 for JPY, 2 for USD, 3 for KWD, 4 for CLF. */
    @ParameterizedTest
    @CsvSource({"JPY, 3, 1.5, 5", "USD, 3, 1.115, 335", "KWD, 3, 1.1115, 3335", "CLF, 3, 1.11115, 33335"})
    void a_line_is_rounded_half_up_to_the_minor_unit_of_its_currency(
            String currency, String quantity, String price, long minor) {
        String csv = "number,issued_on,currency,line,item,quantity,unit,price%nA-1,2026-05-20,%s,1,pins,%s,EA,%s%n"
                .formatted(currency, quantity, price);

        assertThat(InvoiceFile.read(bytes(csv)).totals().payable()).isEqualTo(Money.of(minor, currency));
    }

    static SupplierInvoice read(String file) {
        return InvoiceFile.read(bytes(text(file)));
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static String text(String file) {
        try (InputStream in =
                Objects.requireNonNull(InvoiceFileTest.class.getResourceAsStream("/invoices/" + file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
