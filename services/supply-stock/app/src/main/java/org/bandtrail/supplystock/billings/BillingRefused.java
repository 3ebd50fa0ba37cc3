package org.bandtrail.supplystock.billings;

import java.util.List;
import org.bandtrail.eventstore.Refusal;
import org.bandtrail.supplystock.purchases.PurchaseId;

/** Why lines are not billed. */
public abstract sealed class BillingRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private BillingRefused(String message) {
        super(message);
    }

    /** Lines do not match order and delivery. */
    public static final class DoesNotMatch extends BillingRefused {
        private static final long serialVersionUID = 1L;

        DoesNotMatch(PurchaseId purchase, List<String> sentences) {
            super("The invoice does not match order [%s]. %s".formatted(purchase, String.join(" ", sentences)));
        }
    }
}
