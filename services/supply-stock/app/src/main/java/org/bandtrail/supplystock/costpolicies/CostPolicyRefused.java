package org.bandtrail.supplystock.costpolicies;

import org.bandtrail.eventstore.Refusal;

/** Why a policy is refused. */
public abstract sealed class CostPolicyRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private CostPolicyRefused(String message) {
        super(message);
    }

    /** One year, one formula. */
    public static final class YearHasBegun extends CostPolicyRefused {
        private static final long serialVersionUID = 1L;

        YearHasBegun(int year, CostMethod holds) {
            super("Year [%d] has entries in the books and keeps [%s] to its end. Choose year [%d] or a later one."
                    .formatted(year, holds.word(), year + 1));
        }
    }

    /** Nobody could say later why. */
    public static final class CostPolicyWithoutReason extends CostPolicyRefused {
        private static final long serialVersionUID = 1L;

        CostPolicyWithoutReason(int year) {
            super("The cost policy of [%d] needs a reason. Write why fasteners are valued so.".formatted(year));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** No year of a programme. */
    public static final class YearUnfit extends CostPolicyRefused {
        private static final long serialVersionUID = 1L;

        YearUnfit(int year, int earliest, int latest) {
            super("Year [%d] is not between %d and %d. Check the number.".formatted(year, earliest, latest));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
