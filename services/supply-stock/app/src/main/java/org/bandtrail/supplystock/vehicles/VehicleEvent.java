package org.bandtrail.supplystock.vehicles;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a vehicle. */
public sealed interface VehicleEvent {
    /** The vehicle it happened to. */
    VehicleId vehicleId();

    /** Registered under a name, at a depot. */
    @StoredAs("vehicle.registered")
    @Revision("1")
    record Registered(VehicleId vehicleId, String name, DepotId depot, PersonId by, Occurred occurred)
            implements VehicleEvent {}
}
