package org.bandtrail.inspections.bands;

import org.bandtrail.eventstore.Refusal;
import org.bandtrail.kernel.BandId;

/** Why a record cannot be kept. A fact of the field is refused for one reason only: its name is taken. */
public abstract sealed class BandRefused extends Refusal {
    private static final long serialVersionUID = 1;

    private BandRefused(String message) {
        super(message);
    }

    /** Two different facts of one band under one identity. */
    public static final class IdentityTaken extends BandRefused {
        private static final long serialVersionUID = 1;

        IdentityTaken(BandId band, String id) {
            super("[%s] already names another fact of band [%s]. Give the new one an identity of its own."
                    .formatted(id, band));
        }
    }
}
