package org.bandtrail.supplystock.billings;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.purchases.PurchaseId;
import org.bandtrail.supplystock.tolerances.Tolerances;
import org.jspecify.annotations.Nullable;

/** What people ask of the billings of a purchase. */
public sealed interface BillingCommand {

    /**
     * Wish: bill these lines of an invoice. Refused as a whole if one does not match.
     *
     * @param invoice identity of the invoice
     * @param orders the lines of the purchase with what came of them, as far as they are billed
     */
    record Bill(
            @TargetAggregateIdentifier PurchaseId purchase,
            String invoice,
            List<OrderLineFigures> orders,
            List<ToBill> lines,
            Tolerances tolerances,
            PersonId by,
            Occurred occurred)
            implements BillingCommand {
        /** The figures of a line of the purchase, or null. */
        @Nullable
        OrderLineFigures order(int line) {
            return orders.stream()
                    .filter(each -> each.line() == line)
                    .findFirst()
                    .orElse(null);
        }
    }
}
