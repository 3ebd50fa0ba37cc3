package org.bandtrail.supplystock.transfers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.relocations.Relocating;
import org.springframework.stereotype.Component;

/** Sends a transfer's commands to its reels and batches, inside one work: all lines or none. */
@Component
class Carriage {
    private final Commands commands;
    private final Relocating relocating;

    Carriage(Commands commands, Relocating relocating) {
        this.commands = commands;
        this.relocating = relocating;
    }

    /** Loads the lines; what each really had is read from the events. */
    List<TransferLine> send(TransferController.Send wish, PersonId by, Occurred occurred) {
        Place onTheWay = Place.inTransit(wish.transferId().value());
        var why = new Relocating.Why(StockMove.SENT, wish.transferId().value(), null);
        requireStops(wish);
        List<TransferLine> lines = new ArrayList<>();
        for (ReelId reel : TransferController.orNone(wish.reels())) {
            Place shelf = shelf(wish.from(), depot -> relocating.whereIs(reel, depot));
            lines.add(
                    new TransferLine("reel", reel.value(), relocating.reel(reel, shelf, onTheWay, why, by, occurred)));
        }
        for (TransferController.SomePieces some : TransferController.orNone(wish.batches())) {
            Place shelf = shelf(wish.from(), depot -> relocating.whereIs(some.batchId(), depot));
            lines.add(new TransferLine(
                    "batch",
                    some.batchId().value(),
                    relocating.batch(some.batchId(), shelf, onTheWay, some.pieces(), why, by, occurred)));
        }
        return lines;
    }

    private static void requireStops(TransferController.Send wish) {
        for (Place stop : List.of(wish.from(), wish.to())) {
            if (stop.kind() != PlaceKind.DEPOT && stop.kind() != PlaceKind.VEHICLE) {
                throw new TransferRefused.TransferNowhere(wish.transferId(), stop);
            }
        }
    }

    private static Place shelf(Place from, java.util.function.Function<DepotId, Place> inDepot) {
        return from.kind() == PlaceKind.DEPOT && from.bin() == null
                ? inDepot.apply(Objects.requireNonNull(from.depotId()))
                : from;
    }

    /**
     * Takes in what arrived; a line that nobody names did not arrive.
     *
     * @param found millimetres or pieces by {@code reel R-1} or {@code batch F-1}
     * @throws IllegalArgumentException naming what was not on the transfer
     */
    List<TransferLine> arrive(TransferRow transfer, Map<String, Long> found, PersonId by, Occurred occurred) {
        Map<String, TransferRow.Line> sent = transfer.lines().stream()
                .collect(Collectors.toMap(line -> line.holding() + " " + line.id(), line -> line));
        for (String each : found.keySet()) {
            if (!sent.containsKey(each)) {
                throw new IllegalArgumentException(
                        "[%s] was not on transfer %s. Receive it by a count or another transfer."
                                .formatted(each, transfer.transferId()));
            }
        }
        Place onTheWay = Place.inTransit(transfer.transferId());
        Place target = Place.parse(transfer.target());
        PersonId carrier = new PersonId(transfer.carrier());
        List<TransferLine> lines = new ArrayList<>();
        sent.forEach((key, line) -> {
            long quantity = found.getOrDefault(key, 0L);
            lines.add(new TransferLine(line.holding(), line.id(), quantity));
            commands.send(
                    line.holding().equals("reel")
                            ? new ReelCommand.Arrive(
                                    new ReelId(line.id()),
                                    onTheWay,
                                    target,
                                    Length.ofMm(quantity),
                                    carrier,
                                    transfer.transferId(),
                                    by,
                                    occurred)
                            : new BatchCommand.Arrive(
                                    new BatchId(line.id()),
                                    onTheWay,
                                    target,
                                    Pieces.of(quantity),
                                    carrier,
                                    transfer.transferId(),
                                    by,
                                    occurred));
        });
        return lines;
    }

    /** Brings everything back to where it started. */
    void callOff(TransferRow transfer, String reason, PersonId by, Occurred occurred) {
        Place onTheWay = Place.inTransit(transfer.transferId());
        Place start = Place.parse(transfer.source());
        var why = new Relocating.Why(StockMove.CALLED_OFF, transfer.transferId(), reason);
        for (TransferRow.Line line : transfer.lines()) {
            if (line.holding().equals("reel")) {
                relocating.reel(new ReelId(line.id()), onTheWay, start, why, by, occurred);
            } else {
                relocating.batch(new BatchId(line.id()), onTheWay, start, null, why, by, occurred);
            }
        }
    }
}
