package org.bandtrail.supplystock.invoicefiles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that attack whoever reads them (OWASP, XML External Entity Prevention; entity expansion). */
class HostileFileTest {

    @Test
    void entities_that_grow_beyond_all_bounds_are_refused_before_they_grow() {
        String file = invoiceWith(
                "<!DOCTYPE Invoice [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
                        + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">]>",
                "&c;");

        refused(file, "document type");
    }

    @Test
    void a_file_of_this_machine_is_never_brought_in(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the-secret");
        String file = invoiceWith("<!DOCTYPE Invoice [<!ENTITY x SYSTEM \"%s\">]>".formatted(secret.toUri()), "&x;");

        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> InvoiceFile.read(InvoiceFileTest.bytes(file)))
                .satisfies(refused -> assertThat(refused.getMessage()).doesNotContain("the-secret"));
    }

    @Test
    void a_document_type_from_elsewhere_is_refused_even_if_nothing_uses_it() {
        refused(invoiceWith("<!DOCTYPE Invoice SYSTEM \"http://127.0.0.1:9/never.dtd\">", "A-1"), "document type");
    }

    @Test
    void an_entity_nobody_declared_is_refused() {
        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> InvoiceFile.read(InvoiceFileTest.bytes(invoiceWith("", "&nobody;"))));
    }

    @Test
    void a_file_that_is_too_large_is_refused_by_its_size() {
        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> InvoiceFile.read(new byte[5_000_001]))
                .withMessageContaining("5000001 bytes; at most 5000000");
    }

    @Test
    void a_file_that_is_too_deep_is_refused() {
        String deep = "<a>".repeat(31) + "</a>".repeat(31);

        refused(deep, "30 levels");
        assertThatExceptionOfType(UnreadableInvoice.class)
                .as("30 levels are read and are still no invoice")
                .isThrownBy(() -> InvoiceFile.read(InvoiceFileTest.bytes("<a>".repeat(30) + "</a>".repeat(30))))
                .withMessageContaining("neither a UBL Invoice nor a UBL CreditNote");
    }

    @Test
    void a_file_of_very_many_elements_is_refused() {
        refused("<a>" + "<b/>".repeat(100_001) + "</a>", "100000 elements");
    }

    @Test
    void half_a_file_and_no_file_are_refused() {
        refused("<Invoice><cbc:ID>", "no well-formed XML");
        refused("  ", "The file is empty.");
    }

    private static void refused(String file, String why) {
        assertThatExceptionOfType(UnreadableInvoice.class)
                .isThrownBy(() -> InvoiceFile.read(InvoiceFileTest.bytes(file)))
                .withMessageContaining(why)
                .withMessageEndingWith("Nothing was stored.");
    }

    private static String invoiceWith(String declaration, String number) {
        String text = InvoiceFileTest.text("base-figures.xml");
        return text.replace("<Invoice ", declaration + "<Invoice ").replace(">R-1001<", ">" + number + "<");
    }
}
