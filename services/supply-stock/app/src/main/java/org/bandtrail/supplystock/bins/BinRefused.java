package org.bandtrail.supplystock.bins;

import org.bandtrail.eventstore.Refusal;

/** Why a wish about a bin is refused. */
public abstract sealed class BinRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private BinRefused(String message) {
        super(message);
    }

    /** The depot has such a bin. */
    public static final class BinMarkedAlready extends BinRefused {
        private static final long serialVersionUID = 1L;

        BinMarkedAlready(BinId bin) {
            super("Bin [%s] is marked already. Choose another mark.".formatted(bin));
        }
    }

    /** The depot has no such bin. */
    public static final class BinUnknown extends BinRefused {
        private static final long serialVersionUID = 1L;

        BinUnknown(BinId bin) {
            super("Bin [%s] is not marked in that depot. Mark it first, or scan another.".formatted(bin));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
