package org.bandtrail.supplystock.vehicles;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a vehicle.
 *
 * @param name what people call it, null until registered
 */
public record Vehicle(@Nullable String name) {
    /** A vehicle nobody has registered. */
    public static final Vehicle UNKNOWN = new Vehicle(null);

    /**
     * What a command makes happen.
     *
     * @throws VehicleRefused if the wish cannot be granted
     */
    public List<VehicleEvent> decide(VehicleCommand command) {
        return switch (command) {
            case VehicleCommand.Register register -> {
                if (name != null) {
                    throw new VehicleRefused.VehicleKnownAlready(register.vehicleId(), name);
                }
                if (register.name().isBlank()) {
                    throw new VehicleRefused.VehicleWithoutName(register.vehicleId());
                }
                yield List.of(new VehicleEvent.Registered(
                        register.vehicleId(),
                        register.name().strip(),
                        register.depot(),
                        register.by(),
                        register.occurred()));
            }
        };
    }

    /** The vehicle after an event. */
    public Vehicle evolve(VehicleEvent event) {
        return switch (event) {
            case VehicleEvent.Registered registered -> new Vehicle(registered.name());
        };
    }
}
