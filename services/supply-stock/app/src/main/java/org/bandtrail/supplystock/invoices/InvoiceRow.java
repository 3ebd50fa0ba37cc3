package org.bandtrail.supplystock.invoices;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One invoice as people see it. Sums are negative on a credit note.
 *
 * @param kind INVOICE or CREDIT_NOTE
 * @param state waiting, held, approved once, part approved, approved or withdrawn
 * @param heldBecause why the whole is held, or null
 * @param firstBy who approved and waits for a second person, or null
 * @param spread charges spread over goods so far
 */
public record InvoiceRow(
        String invoiceId,
        String supplierId,
        String kind,
        String number,
        LocalDate issuedOn,
        @Nullable LocalDate dueOn,
        @Nullable String credits,
        @Nullable String order,
        Money tax,
        Money payable,
        Money approved,
        Money spread,
        String state,
        @Nullable String heldBecause,
        @Nullable String firstBy,
        @Nullable String withdrawn,
        String source,
        Instant registeredAt) {

    /**
     * One line.
     *
     * @param quantity decimal number as written, in {@code unit}
     * @param use GOODS, FREIGHT, DUTY or OTHER
     * @param linkQuantity millimetres or pieces it bills, null without an order line
     * @param standing OPEN, HELD, SETTLED, APPROVED or NOT_PAID
     */
    public record Line(
            String line,
            String item,
            @Nullable String sellersItem,
            String quantity,
            String unit,
            String price,
            String perQuantity,
            Money amount,
            Money net,
            String use,
            @Nullable String purchaseId,
            @Nullable Integer purchaseLine,
            @Nullable Long linkQuantity,
            String standing,
            @Nullable String reason,
            @Nullable Long payQuantity,
            @Nullable Money payNet) {}

    /** A charge on the document as a whole. */
    public record Charge(int number, String reason, Money amount) {}

    /** Something that happened to it. */
    public record Happened(String what, @Nullable String note, String byPerson, Instant at) {}

    /** Everything about one invoice. */
    public record Whole(InvoiceRow invoice, List<Line> lines, List<Charge> charges, List<Happened> history) {}
}
