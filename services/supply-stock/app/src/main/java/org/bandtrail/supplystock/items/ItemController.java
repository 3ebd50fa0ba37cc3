package org.bandtrail.supplystock.items;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventexchange.entry.ActingPerson;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.eventstore.Work;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.Pieces;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Items over HTTP. */
@RestController
@Tag(name = "items", description = "Kinds of tape, mesh and fasteners the programme buys")
final class ItemController {
    private final Work work;
    private final Commands commands;
    private final Items items;
    private final Clock clock;

    ItemController(Work work, Commands commands, Items items, Clock clock) {
        this.work = work;
        this.commands = commands;
        this.items = items;
        this.clock = clock;
    }

    @PostMapping("/items")
    @Operation(summary = "Register an item with its measures and usual cost")
    Known register(@RequestBody Register request, ActingPerson by) {
        return work.once(request.commandId(), request, Known.class, () -> {
            commands.send(new ItemCommand.Register(
                    request.materialCode(), request.description(), by.id(), Occurred.at(clock.instant())));
            return new Known(request.materialCode());
        });
    }

    @PostMapping("/items/{material}/correct")
    @Operation(summary = "Correct the name, measures, pack or usual cost of an item, with a reason; its kind stays")
    Known correct(@PathVariable MaterialCode material, @RequestBody Correct request, ActingPerson by) {
        return work.once(request.commandId(), List.of(material.value(), "correct", request), Known.class, () -> {
            commands.send(new ItemCommand.Correct(
                    material, request.description(), request.reason(), by.id(), Occurred.at(clock.instant())));
            return new Known(material);
        });
    }

    @PutMapping("/items/{material}/supply")
    @Operation(summary = "Say how an item is supplied; reorder points follow from it")
    Known supply(@PathVariable MaterialCode material, @RequestBody SetSupply request, ActingPerson by) {
        return work.once(request.commandId(), List.of(material.value(), request), Known.class, () -> {
            commands.send(new ItemCommand.SetSupply(
                    material,
                    new Supply(request.leadTimeDays(), request.leadTimeSdDays(), request.serviceLevelPermille()),
                    request.reason(),
                    by.id(),
                    Occurred.at(clock.instant())));
            return new Known(material);
        });
    }

    @GetMapping("/items")
    @Operation(summary = "All items")
    Rows list() {
        return new Rows(items.all(), null);
    }

    record Register(
            UUID commandId,
            MaterialCode materialCode,
            MaterialKind kind,
            String name,
            @Nullable Length width,
            @Nullable Length opening,
            @Nullable Length reelLength,
            @Nullable Pieces packSize,
            Money unitCost) {
        ItemDescription description() {
            return new ItemDescription(kind, name, width, opening, reelLength, packSize, unitCost);
        }
    }

    record Correct(
            UUID commandId,
            MaterialKind kind,
            String name,
            @Nullable Length width,
            @Nullable Length opening,
            @Nullable Length reelLength,
            @Nullable Pieces packSize,
            Money unitCost,
            String reason) {
        ItemDescription description() {
            return new ItemDescription(kind, name, width, opening, reelLength, packSize, unitCost);
        }
    }

    record SetSupply(UUID commandId, int leadTimeDays, int leadTimeSdDays, int serviceLevelPermille, String reason) {}

    record Known(MaterialCode materialCode) {}

    record Rows(List<ItemRow> rows, @Nullable String next) {}
}
