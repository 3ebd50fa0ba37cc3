package org.bandtrail.supplystock.invoicefiles;

import com.fasterxml.jackson.annotation.JsonFormat;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One invoice or credit note as the supplier wrote it. Amounts have the sign of the document: a credit note's are
 * positive and count against. All amounts are in the document's currency (ISO 4217). In JSON decimal numbers are text,
 * so that no digit is lost on the way.
 *
 * @param number the supplier's own number, as printed
 * @param dueOn the last day to pay, or null if the document says none
 * @param supplierNames the names and identities by which the document knows its sender, in the order found
 * @param order the order it names for all its lines, or null
 * @param credits number of the invoice that a credit note takes back, or null
 * @param adjustments allowances and charges on the document as a whole
 * @param taxes tax by category and rate; empty if the document has none
 */
public record SupplierInvoice(
        InvoiceKind kind,
        String number,
        LocalDate issuedOn,
        @Nullable LocalDate dueOn,
        String currency,
        List<String> supplierNames,
        @Nullable String order,
        @Nullable String credits,
        List<Line> lines,
        List<Adjustment> adjustments,
        List<Tax> taxes,
        Totals totals) {

    /** Refuses a document without number, day or lines. */
    public SupplierInvoice {
        if (number.isBlank()) {
            throw new IllegalArgumentException("The invoice has no number. Write the supplier's own number.");
        }
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("Invoice [%s] has no lines. Enter at least one.".formatted(number));
        }
        lines = List.copyOf(lines);
        adjustments = List.copyOf(adjustments);
        taxes = List.copyOf(taxes);
    }

    /**
     * One line.
     *
     * @param id the supplier's number of the line
     * @param quantity as billed, in {@code unit}; negative for something taken back
     * @param unit UN/CEFACT Recommendation 20 code, or a package code of Recommendation 21 with X in front
     * @param price of {@code perQuantity} units, with all digits written
     * @param amount the line's own sum, after its allowances and charges, without tax
     * @param order the order this line names, or null
     * @param orderLine the line of that order, or null
     * @param taxCategory code of UN/CEFACT list 5305, or null
     * @param taxPercent rate in percent, or null
     */
    public record Line(
            String id,
            @JsonFormat(shape = JsonFormat.Shape.STRING) BigDecimal quantity,
            String unit,
            @JsonFormat(shape = JsonFormat.Shape.STRING) BigDecimal price,
            @JsonFormat(shape = JsonFormat.Shape.STRING) BigDecimal perQuantity,
            Money amount,
            String item,
            @Nullable String sellersItem,
            @Nullable String order,
            @Nullable String orderLine,
            List<Adjustment> adjustments,
            @Nullable String taxCategory,

            @JsonFormat(shape = JsonFormat.Shape.STRING) @Nullable
            BigDecimal taxPercent) {}

    /**
     * An allowance (takes away) or a charge (adds), such as freight.
     *
     * @param charge true if it adds
     * @param amount never negative in a sound document
     */
    public record Adjustment(
            boolean charge,
            String reason,
            Money amount,
            @Nullable String taxCategory,

            @JsonFormat(shape = JsonFormat.Shape.STRING) @Nullable
            BigDecimal taxPercent) {
        /** What it adds to the document, negative for an allowance. */
        public long signedMinor() {
            return charge ? amount.minor() : -amount.minor();
        }
    }

    /** Tax of one category and rate, with the amount it is reckoned from. */
    public record Tax(
            @Nullable String category,

            @JsonFormat(shape = JsonFormat.Shape.STRING) @Nullable
            BigDecimal percent,

            Money base,
            Money amount) {}

    /**
     * The sums at the end of the document.
     *
     * @param lines sum of the lines
     * @param beforeTax lines less allowances plus charges
     * @param withTax what is before tax, and the tax
     * @param prepaid paid already
     * @param rounding added so that the payable sum is round
     */
    public record Totals(
            Money lines,
            Money allowances,
            Money charges,
            Money beforeTax,
            Money tax,
            Money withTax,
            Money prepaid,
            Money rounding,
            Money payable) {}
}
