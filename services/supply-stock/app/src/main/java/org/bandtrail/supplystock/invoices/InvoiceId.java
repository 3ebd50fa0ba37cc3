package org.bandtrail.supplystock.invoices;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import org.bandtrail.kernel.Identity;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.invoicefiles.InvoiceKind;
import org.bandtrail.supplystock.suppliers.SupplierId;

/** Identity of one invoice or credit note, made from what would make a second one a duplicate. */
public record InvoiceId(@JsonValue String value) {
    private static final int BYTES = 8;

    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public InvoiceId {
        value = Identity.checked("invoice", value);
    }

    /**
     * The identity of a paper: the same supplier, kind, number (blanks, dashes and case left aside) and payable sum
     * always give the same one.
     */
    public static InvoiceId of(SupplierId supplier, InvoiceKind kind, String number, Money payable) {
        String spelt = number.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
        String paper = "%s|%s|%s|%d|%s"
                .formatted(supplier, kind, spelt.isEmpty() ? number : spelt, payable.minor(), payable.currency());
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(paper.getBytes(StandardCharsets.UTF_8));
            return new InvoiceId("INV-" + HexFormat.of().withUpperCase().formatHex(digest, 0, BYTES));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }

    @Override
    public String toString() {
        return value;
    }
}
