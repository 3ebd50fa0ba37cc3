package org.bandtrail.supplystock.invoicematches;

import java.math.BigDecimal;
import org.bandtrail.kernel.Length;
import org.bandtrail.supplystock.billings.BilledLines;
import org.bandtrail.supplystock.billings.OrderLineFigures;
import org.bandtrail.supplystock.invoicefiles.UnitCode;
import org.bandtrail.supplystock.invoicefiles.UnitCode.Measure;
import org.bandtrail.supplystock.invoices.LineLink;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Turns what a supplier bills into millimetres or pieces of an order line. */
@Component
class Linking {
    private final BilledLines billed;

    Linking(BilledLines billed) {
        this.billed = billed;
    }

    /**
     * What a person says a line bills.
     *
     * @param priceOnly a credit that lowers the price and takes no goods back
     * @param quantity what it bills in words of the books (12.5 m, or a count), if the unit on the paper does not say
     */
    record Wish(
            PurchaseId purchaseId,
            int purchaseLine,
            boolean priceOnly,
            @Nullable String quantity) {}

    /**
     * The link with its quantity.
     *
     * @param supplier who sent the invoice
     * @param written the quantity on the paper
     * @param unit the unit on the paper
     * @param sign -1 for a credit note
     * @throws MatchRefused if nobody ordered that line, or of another supplier
     * @throws IllegalArgumentException naming the unit if it cannot be converted
     */
    LineLink link(Wish wish, SupplierId supplier, BigDecimal written, String unit, int sign) {
        OrderLineFigures order = billed.order(wish.purchaseId(), wish.purchaseLine())
                .orElseThrow(() -> new MatchRefused.OrderLineUnknown(wish.purchaseId(), wish.purchaseLine()));
        if (!order.supplier().equals(supplier)) {
            throw new MatchRefused.OrderOfAnother(wish.purchaseId(), order.supplier(), supplier);
        }
        long quantity = wish.priceOnly() ? 0 : sign * quantity(wish, order, written, unit);
        return new LineLink(wish.purchaseId(), wish.purchaseLine(), quantity);
    }

    private static long quantity(Wish wish, OrderLineFigures order, BigDecimal written, String unit) {
        String said = wish.quantity();
        if (said == null || said.isBlank()) {
            return UnitCode.toBooks(written, unit, order.measure(), order.content());
        }
        if (order.measure() == Measure.MILLIMETRES) {
            return Length.parse(said).mm();
        }
        if (!said.strip().matches("\\d{1,12}")) {
            throw new IllegalArgumentException("[%s] is not a count of pieces. Write digits only.".formatted(said));
        }
        return Long.parseLong(said.strip());
    }
}
