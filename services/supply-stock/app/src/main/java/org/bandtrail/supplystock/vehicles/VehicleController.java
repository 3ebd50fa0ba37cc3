package org.bandtrail.supplystock.vehicles;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.relocations.Relocating;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Vehicles over HTTP. */
@RestController
@Tag(name = "vehicles", description = "Trucks and trailers that carry stock")
final class VehicleController {
    private final Work work;
    private final Commands commands;
    private final Relocating relocating;
    private final Vehicles vehicles;
    private final Clock clock;

    VehicleController(Work work, Commands commands, Relocating relocating, Vehicles vehicles, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.relocating = relocating;
        this.vehicles = vehicles;
        this.clock = clock;
    }

    @PostMapping("/vehicles")
    @Operation(summary = "Register a vehicle")
    Known register(@RequestBody Register request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new VehicleCommand.Register(
                    request.vehicleId(), request.name(), request.depotId(), by.id(), Occurred.at(clock.instant())));
            return new Known(request.vehicleId());
        });
    }

    @PostMapping("/vehicles/{vehicleId}/load")
    @Operation(summary = "Load whole reels and pieces from a depot: everything or nothing")
    Moved load(@PathVariable VehicleId vehicleId, @RequestBody Freight request, ActingPerson by) {
        return move(vehicleId, request, StockMove.LOADED, by);
    }

    @PostMapping("/vehicles/{vehicleId}/unload")
    @Operation(summary = "Unload whole reels and pieces at a depot: everything or nothing")
    Moved unload(@PathVariable VehicleId vehicleId, @RequestBody Freight request, ActingPerson by) {
        return move(vehicleId, request, StockMove.UNLOADED, by);
    }

    private Moved move(VehicleId vehicle, Freight request, StockMove what, ActingPerson by) {
        return work.once(request.commandId(), List.of(vehicle.value(), what, request), Moved.class, () -> {
            if (!vehicles.isKnown(vehicle)) {
                throw new VehicleRefused.VehicleUnknown(vehicle);
            }
            boolean load = what == StockMove.LOADED;
            Place onIt = Place.vehicle(vehicle.value());
            Occurred occurred = new Occurred(
                    request.happenedAt() == null ? clock.instant() : request.happenedAt(), clock.instant());
            var why = new Relocating.Why(what, null, null);
            List<Line> lines = new ArrayList<>();
            for (ReelId reel : orNone(request.reels())) {
                Place shelf = load ? relocating.whereIs(reel, request.depotId()) : Place.depot(request.depotId());
                lines.add(new Line(
                        reel.value(),
                        relocating.reel(reel, load ? shelf : onIt, load ? onIt : shelf, why, by.id(), occurred)));
            }
            for (SomePieces some : orNone(request.batches())) {
                Place shelf =
                        load ? relocating.whereIs(some.batchId(), request.depotId()) : Place.depot(request.depotId());
                lines.add(new Line(
                        some.batchId().value(),
                        relocating.batch(
                                some.batchId(),
                                load ? shelf : onIt,
                                load ? onIt : shelf,
                                some.pieces(),
                                why,
                                by.id(),
                                occurred)));
            }
            return new Moved(vehicle, lines, occurred.recorded());
        });
    }

    private static <T> List<T> orNone(@Nullable List<T> list) {
        return list == null ? List.of() : list;
    }

    @GetMapping("/vehicles")
    @Operation(summary = "All vehicles with how much is on each")
    Rows list() {
        return new Rows(vehicles.all(), null);
    }

    record Register(UUID commandId, VehicleId vehicleId, String name, DepotId depotId) {}

    record Known(VehicleId vehicleId) {}

    record Freight(
            UUID commandId,
            DepotId depotId,
            @Nullable List<ReelId> reels,
            @Nullable List<SomePieces> batches,
            @Nullable Instant happenedAt) {}

    record SomePieces(BatchId batchId, @Nullable Pieces pieces) {}

    record Line(String id, long quantity) {}

    /** @param at when the books learnt of it: by this the moves can be taken back, see {@code takebacks} */
    record Moved(
            VehicleId vehicleId, List<Line> lines, @Nullable Instant at) {}

    record Rows(List<VehicleRow> rows, @Nullable String next) {}
}
