package org.bandtrail.supplystock.grants;

import org.bandtrail.eventstore.Refusal;

/** Why a wish about a grant is refused. */
public abstract sealed class GrantRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private GrantRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class GrantKnown extends GrantRefused {
        private static final long serialVersionUID = 1L;

        GrantKnown(GrantId grant, String name) {
            super("Grant [%s] is entered already as %s. Choose another identity, or change its terms."
                    .formatted(grant, name));
        }
    }

    /** Nobody entered it. */
    public static final class GrantUnknown extends GrantRefused {
        private static final long serialVersionUID = 1L;

        /** Says which one. */
        public GrantUnknown(GrantId grant) {
            super("Grant [%s] is not known. Enter it first.".formatted(grant));
        }
    }

    /** Spend is added up in one currency for ever. */
    public static final class GrantCurrencyFixed extends GrantRefused {
        private static final long serialVersionUID = 1L;

        GrantCurrencyFixed(GrantId grant, String currency, String asked) {
            super("Grant [%s] is in [%s] and cannot become one in [%s]. Enter another grant instead."
                    .formatted(grant, currency, asked));
        }
    }

    /** Terms that make no sense. */
    public static final class GrantTermsUnfit extends GrantRefused {
        private static final long serialVersionUID = 1L;

        GrantTermsUnfit(GrantId grant, String what, Object value, String advice) {
            super("Grant [%s] cannot have the %s [%s]. %s".formatted(grant, what, value, advice));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** A change says why. */
    public static final class GrantReasonMissing extends GrantRefused {
        private static final long serialVersionUID = 1L;

        GrantReasonMissing(GrantId grant) {
            super("The change of grant [%s] needs a reason. Write in a few words why.".formatted(grant));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
