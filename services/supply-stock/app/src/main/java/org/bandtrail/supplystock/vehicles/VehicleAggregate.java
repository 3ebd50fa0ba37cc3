package org.bandtrail.supplystock.vehicles;

import java.util.List;
import org.axonframework.commandhandling.CommandHandler;
import org.axonframework.eventsourcing.EventSourcingHandler;
import org.axonframework.modelling.command.AggregateCreationPolicy;
import org.axonframework.modelling.command.AggregateIdentifier;
import org.axonframework.modelling.command.AggregateRoot;
import org.axonframework.modelling.command.CreationPolicy;
import org.bandtrail.eventstore.AggregateOf;
import org.bandtrail.eventstore.Decided;
import org.jspecify.annotations.Nullable;

/** Axon's view of a vehicle. */
@AggregateRoot(type = "vehicle")
final class VehicleAggregate {
    static final AggregateOf<VehicleAggregate> DECLARED =
            new AggregateOf<>("vehicle", VehicleAggregate.class, VehicleCommand.class, VehicleEvent.class);

    @AggregateIdentifier
    private @Nullable String storedId;

    private Vehicle vehicle = Vehicle.UNKNOWN;

    @CommandHandler
    @CreationPolicy(AggregateCreationPolicy.CREATE_IF_MISSING)
    List<VehicleEvent> handle(VehicleCommand command) {
        return Decided.applied(vehicle.decide(command));
    }

    @EventSourcingHandler
    void on(VehicleEvent event) {
        storedId = DECLARED.storedId(event.vehicleId());
        vehicle = vehicle.evolve(event);
    }
}
