package org.bandtrail.supplystock.countrules;

import org.bandtrail.eventstore.Refusal;

/** Why a wish about the rules of counting is refused. */
public abstract sealed class CountRuleRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private CountRuleRefused(String message) {
        super(message);
    }

    @Override
    public int status() {
        return 422;
    }

    /** Rules need a source and a reason. */
    public static final class RulesWithoutReason extends CountRuleRefused {
        private static final long serialVersionUID = 1L;

        RulesWithoutReason() {
            super(
                    "The rules of counting need a source and a reason. Say where the figures come from and why they hold.");
        }
    }

    /** The figures cannot be meant. */
    public static final class RulesNotSound extends CountRuleRefused {
        private static final long serialVersionUID = 1L;

        RulesNotSound(CountRules rules) {
            super(
                    "These rules [%s] cannot be meant. Tolerances are 0 or more, shares go up to 1000, days grow from A to C."
                            .formatted(rules));
        }
    }
}
