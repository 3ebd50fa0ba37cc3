package org.bandtrail.supplystock.vehicles;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What people ask of a vehicle. */
public sealed interface VehicleCommand {

    /** Wish: register a vehicle with the depot it belongs to. Refused if the identity is taken or the name empty. */
    record Register(
            @TargetAggregateIdentifier VehicleId vehicleId, String name, DepotId depot, PersonId by, Occurred occurred)
            implements VehicleCommand {}
}
