package org.bandtrail.supplystock.billings;

import java.util.List;
import org.bandtrail.eventstore.Refusal;

/** Why lines are not billed. */
public abstract sealed class BillingRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private BillingRefused(String message) {
        super(message);
    }

    /** Lines do not match order and delivery. */
    public static final class DoesNotMatch extends BillingRefused {
        private static final long serialVersionUID = 1L;

        DoesNotMatch(String purchase, List<String> sentences) {
            super("The invoice does not match order [%s]. %s".formatted(purchase, String.join(" ", sentences)));
        }
    }
}
