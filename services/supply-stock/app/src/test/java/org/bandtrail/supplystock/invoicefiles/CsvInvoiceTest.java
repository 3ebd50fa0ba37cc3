package org.bandtrail.supplystock.invoicefiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.Charset;
import org.bandtrail.kernel.Money;
import org.junit.jupiter.api.Test;

class CsvInvoiceTest {
    private static final String HEADER =
            "number;issued_on;currency;what;line;item;sellers_item;order;order_line;quantity;unit;price;per;amount;"
                    + "payable\n";

    @Test
    void lines_charges_and_a_payable_sum_are_read() {
        SupplierInvoice invoice = read(HEADER
                + "A-17;2026-05-20;USD;;1;Band tape;RR-11;PO-7;1;8;XRL;48,50;;;413\n"
                + ";;;charge;;Freight;;;;;;;;25.00;\n");

        assertThat(invoice.lines().getFirst().amount()).isEqualTo(Money.of(388_00, "USD"));
        assertThat(invoice.adjustments().getFirst().reason()).isEqualTo("Freight");
        assertThat(invoice.totals().payable()).isEqualTo(Money.of(413_00, "USD"));
        assertThat(InvoiceArithmetic.check(invoice)).isEmpty();
    }

    @Test
    void a_price_for_a_hundred_is_divided() {
        SupplierInvoice invoice = read(HEADER + "A-18;2026-05-20;USD;;1;Pins;;;;1440;C62;1.25;100;18.00;18.00\n");

        assertThat(InvoiceArithmetic.check(invoice)).isEmpty();
    }

    @Test
    void wrong_data_names_row_and_column_and_nothing_is_read() {
        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> read(HEADER
                        + "A-19;20 May;USD;;1;Tape;;;;x;XRL;48.50;;;\n"
                        + "A-20;;;service;2;;;;;1;XRL;1,250;0;;\n"
                        + ";;;;3;Pins;;;;1,250;EA;1;;0.001;\n"))
                .satisfies(refused -> assertThat(refused.problems())
                        .extracting(FileProblem::sentence)
                        .contains(
                                "row 3, number: [A-20] is not the [A-19] of the first row. One file is one invoice.",
                                "row 2, quantity: [x] is not a number. Write it like 12.5.",
                                "row 3, what: [service] is not goods, charge or allowance.",
                                "row 4, quantity: [1,250] has two meanings. Write a point before decimals.",
                                "row 4, amount: [0.001] is no amount of USD, which has 2 decimals.",
                                "row 2, issued_on: [20 May] is not a day. Write it like 2026-05-04."));
    }

    @Test
    void unknown_and_missing_columns_are_named() {
        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> read("number,colour\nA-1,red\n"))
                .withMessageContaining("row 1, colour: This column is not known.")
                .withMessageContaining("row 1, price: This column is missing.");
    }

    @Test
    void a_separator_too_many_is_named_and_not_cut_off() {
        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> read("number,issued_on,currency,line,item,quantity,unit,price\n"
                        + "A-1,2026-05-20,USD,1,Tape, wide,2,XRL,48.50\n"))
                .withMessageContaining("row 2: [48.50] stands beyond the last column.");
    }

    @Test
    void a_spreadsheet_of_an_older_alphabet_is_read() {
        byte[] old = (HEADER + "A-21;2026-05-20;EUR;;1;Klebeb\u00e4nder;;;;1;XRL;10;;;\n")
                .getBytes(Charset.forName("windows-1252"));

        assertThat(InvoiceFile.read(old).lines().getFirst().item()).isEqualTo("Klebeb\u00e4nder");
    }

    private static SupplierInvoice read(String csv) {
        return InvoiceFile.read(InvoiceFileTest.bytes(csv));
    }
}
