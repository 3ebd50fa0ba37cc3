package org.bandtrail.supplystock.budgets;

import org.bandtrail.eventstore.Refusal;

/** Why a wish about a budget is refused. */
public abstract sealed class BudgetRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private BudgetRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class BudgetKnown extends BudgetRefused {
        private static final long serialVersionUID = 1L;

        BudgetKnown(BudgetId budget, String name) {
            super("Budget [%s] is set already as %s. Choose another identity, or change its amount."
                    .formatted(budget, name));
        }
    }

    /** Nobody set it, or somebody dropped it. */
    public static final class BudgetNotThere extends BudgetRefused {
        private static final long serialVersionUID = 1L;

        BudgetNotThere(BudgetId budget, boolean dropped) {
            super("Budget [%s] %s. Set one first.".formatted(budget, dropped ? "was dropped" : "is not known"));
        }
    }

    /** A plan that makes no sense. */
    public static final class BudgetUnfit extends BudgetRefused {
        private static final long serialVersionUID = 1L;

        BudgetUnfit(BudgetId budget, String what, Object value, String advice) {
            super("Budget [%s] cannot have the %s [%s]. %s".formatted(budget, what, value, advice));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
