package org.bandtrail.supplystock.relocations;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.batches.BatchEvent;
import org.bandtrail.supplystock.holdings.Entry;
import org.bandtrail.supplystock.holdings.HoldingReads;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Moves reels and pieces of batches between places of stock; call it inside a work. */
@Component
public class Relocating {
    private final Commands commands;
    private final HoldingReads reels;
    private final HoldingReads batches;

    Relocating(Commands commands, JdbcClient jdbc) {
        this.commands = commands;
        this.reels = new HoldingReads(jdbc, "reel");
        this.batches = new HoldingReads(jdbc, "batch");
    }

    /**
     * How a group of moves is explained.
     *
     * @param what which way of moving
     * @param reference what explains it, such as a transfer, or null
     * @param reason in words, or null
     */
    public record Why(
            StockMove what,
            @Nullable String reference,
            @Nullable String reason) {}

    /**
     * Moves all that lies at the source.
     *
     * @return millimetres moved
     * @throws org.bandtrail.supplystock.holdings.StockRefused if there is nothing or it does not go there
     */
    public long reel(ReelId reel, Place source, Place target, Why why, PersonId by, Occurred occurred) {
        return moved(commands.ask(new ReelCommand.Relocate(
                reel, why.what(), source, target, null, why.reference(), why.reason(), by, occurred)));
    }

    /**
     * Moves pieces of a batch.
     *
     * @param pieces how many, or null for all that lie there
     * @return pieces moved
     * @throws org.bandtrail.supplystock.holdings.StockRefused if there are fewer or they do not go there
     */
    public long batch(
            BatchId batch,
            Place source,
            Place target,
            @Nullable Pieces pieces,
            Why why,
            PersonId by,
            Occurred occurred) {
        return moved(commands.ask(new BatchCommand.Relocate(
                batch, why.what(), source, target, pieces, why.reference(), why.reason(), by, occurred)));
    }

    /** Where in a depot the books have most of a reel; loose in the depot if they have it nowhere there. */
    public Place whereIs(ReelId reel, DepotId depot) {
        return most(reels.places(reel.value()), depot);
    }

    /** Where in a depot the books have most of a batch; loose in the depot if they have it nowhere there. */
    public Place whereIs(BatchId batch, DepotId depot) {
        return most(batches.places(batch.value()), depot);
    }

    /** How many pieces of a batch the books have set aside at a depot. */
    public long aside(BatchId batch, DepotId depot) {
        String place = Place.setAside(depot).toString();
        return batches.places(batch.value()).stream()
                .filter(each -> each.place().equals(place))
                .mapToLong(HoldingReads.PlaceBalance::quantity)
                .sum();
    }

    private static Place most(List<HoldingReads.PlaceBalance> places, DepotId depot) {
        return places.stream()
                .filter(each -> Place.parse(each.place()).inDepot(depot) && each.quantity() > 0)
                .max(Comparator.comparingLong(HoldingReads.PlaceBalance::quantity))
                .map(each -> Place.parse(each.place()))
                .orElse(Place.depot(depot));
    }

    private static long moved(@Nullable Object answer) {
        return ((List<?>) Objects.requireNonNull(answer))
                .stream()
                        .map(event -> event instanceof ReelEvent reel ? reel.entry() : ((BatchEvent) event).entry())
                        .map(Entry::moves)
                        .flatMap(List::stream)
                        .mapToLong(Move::quantity)
                        .sum();
    }
}
