package org.bandtrail.frontdesk.neighbours.money;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.wording.UnitWords;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** What supply-stock says about invoices. Millimetres or pieces, minor units of money. */
public final class Papers {
    private Papers() {}

    /** A supplier by name. */
    public record Supplier(String supplierId, String name) {}

    /**
     * One invoice.
     *
     * @param kind INVOICE or CREDIT_NOTE
     * @param state waiting, held, approved once, part approved, approved or withdrawn
     */
    public record Invoice(
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
        /** Whether the supplier owes it. */
        public boolean creditNote() {
            return kind.equals("CREDIT_NOTE");
        }
    }

    /** One line as the supplier wrote it and where it stands. */
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
            @Nullable Money payNet) {
        /** What the supplier wrote, in words: quantity, unit and price. */
        public String billed() {
            String per = perQuantity.equals("1") ? "" : " for " + perQuantity;
            return quantity + " " + UnitWords.of(unit) + " at " + price + per;
        }

        /** Whether somebody can still decide about it. */
        public boolean open() {
            return !standing.equals("APPROVED") && !standing.equals("NOT_PAID");
        }
    }

    /** A line beside its order line. */
    public record Match(
            String line,
            @Nullable String purchaseId,
            @Nullable Integer purchaseLine,
            @Nullable String materialCode,
            @Nullable String measure,
            @Nullable Long ordered,
            @Nullable Long received,
            @Nullable Long waiting,
            @Nullable Long billedBefore,
            @Nullable Long billed,
            @Nullable Money expected,
            @Nullable Money carried,
            String verdict,
            boolean acceptable,
            String sentence) {
        /** Whether nothing about it needs a person. */
        public boolean fine() {
            return verdict.equals("matches")
                    || verdict.endsWith(", accepted")
                    || carried != null
                    || List.of("freight", "duty", "other").contains(verdict);
        }
    }

    /** A charge on the document as a whole. */
    public record Charge(int number, String reason, Money amount) {}

    /** Something that happened to an invoice. */
    public record Happened(String what, @Nullable String note, String byPerson, Instant at) {}

    /** One invoice with everything about it; matches stand in the order of the lines. */
    public record Whole(
            Invoice invoice, List<Line> lines, List<Match> matches, List<Charge> charges, List<Happened> history) {}

    /** An order line that a line may bill. */
    public record OrderLine(
            String purchaseId,
            int line,
            String materialCode,
            String kind,
            @Nullable String reference,
            long ordered,
            long received,
            long billed,
            Money price) {}

    /** What a line most probably bills. */
    public record Choice(
            String line,
            String use,
            @Nullable String purchaseId,
            @Nullable Integer purchaseLine,
            boolean priceOnly,
            @Nullable String quantity) {
        /** The value of its option in a form. */
        public String option() {
            return purchaseId == null ? use : "GOODS|" + purchaseId + "|" + purchaseLine;
        }
    }

    /**
     * A paper before it is kept.
     *
     * @param document as it would be kept; it travels in the form and back
     */
    public record Preview(
            JsonNode document,
            String source,
            @Nullable String supplierId,
            @Nullable String invoiceId,
            List<String> findings,
            List<Invoice> earlier,
            List<Choice> choices,
            List<Match> lines,
            Map<String, String> notes,
            List<OrderLine> orderLines) {}

    /** The document of a preview, as far as the page shows it. */
    public record Document(
            String kind,
            String number,
            LocalDate issuedOn,
            @Nullable LocalDate dueOn,
            String currency,
            List<String> supplierNames,
            @Nullable String order,
            List<DocumentLine> lines,
            List<Adjustment> adjustments,
            Totals totals) {}

    /** One line of it. */
    public record DocumentLine(
            String id, BigDecimal quantity, String unit, BigDecimal price, String item, Money amount) {
        /** What the supplier wrote, in words: quantity, unit and price. */
        public String billed() {
            return quantity.toPlainString() + " " + UnitWords.of(unit) + " at " + price.toPlainString();
        }
    }

    /** An allowance or charge of it. */
    public record Adjustment(boolean charge, String reason, Money amount) {}

    /** Its sums. */
    public record Totals(Money lines, Money allowances, Money charges, Money tax, Money payable) {}

    /** What was kept. */
    public record Kept(String invoiceId, Money payable, List<String> findings) {}

    /** What an approval did. */
    public record Outcome(String invoiceId, Money toPay, boolean secondPersonNeeded, List<Carried> carried) {}

    /** A share of a difference. */
    public record Carried(String holding, String id, Money amount) {}
}
