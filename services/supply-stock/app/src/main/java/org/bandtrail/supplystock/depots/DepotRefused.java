package org.bandtrail.supplystock.depots;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.DepotId;

/** Why a wish about a depot is refused. */
public abstract sealed class DepotRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private DepotRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class DepotOpenAlready extends DepotRefused {
        private static final long serialVersionUID = 1L;

        DepotOpenAlready(DepotId depot, String name) {
            super("Depot [%s] is open already as %s. Choose another identity.".formatted(depot, name));
        }
    }

    /** A depot needs a name. */
    public static final class DepotWithoutName extends DepotRefused {
        private static final long serialVersionUID = 1L;

        DepotWithoutName(DepotId depot) {
            super("Depot [%s] needs a name. Write what people call it.".formatted(depot));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
