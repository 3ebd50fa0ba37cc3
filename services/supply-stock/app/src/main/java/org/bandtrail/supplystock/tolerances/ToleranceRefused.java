package org.bandtrail.supplystock.tolerances;

import org.bandtrail.eventstore.Refusal;

/** Why a policy is refused. */
public abstract sealed class ToleranceRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private ToleranceRefused(String message) {
        super(message);
    }

    /** Nobody could say later why these limits hold. */
    public static final class ToleranceWithoutReason extends ToleranceRefused {
        private static final long serialVersionUID = 1L;

        ToleranceWithoutReason() {
            super("The tolerances have no source or no reason. Write both, such as the rule of the programme.");
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
