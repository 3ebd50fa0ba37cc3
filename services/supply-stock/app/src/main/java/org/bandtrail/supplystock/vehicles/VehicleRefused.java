package org.bandtrail.supplystock.vehicles;

import org.bandtrail.eventstore.Refusal;

/** Why a wish about a vehicle is refused. */
public abstract sealed class VehicleRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private VehicleRefused(String message) {
        super(message);
    }

    /** The identity is taken. */
    public static final class VehicleKnownAlready extends VehicleRefused {
        private static final long serialVersionUID = 1L;

        VehicleKnownAlready(VehicleId vehicle, String name) {
            super("Vehicle [%s] is registered already as %s. Choose another identity.".formatted(vehicle, name));
        }
    }

    /** A vehicle needs a name. */
    public static final class VehicleWithoutName extends VehicleRefused {
        private static final long serialVersionUID = 1L;

        VehicleWithoutName(VehicleId vehicle) {
            super("Vehicle [%s] needs a name. Write what people call it.".formatted(vehicle));
        }

        @Override
        public int status() {
            return 422;
        }
    }

    /** Nobody registered it. */
    public static final class VehicleUnknown extends VehicleRefused {
        private static final long serialVersionUID = 1L;

        VehicleUnknown(VehicleId vehicle) {
            super("Vehicle [%s] is not registered. Register it, or check what is painted on it.".formatted(vehicle));
        }

        @Override
        public int status() {
            return 422;
        }
    }
}
