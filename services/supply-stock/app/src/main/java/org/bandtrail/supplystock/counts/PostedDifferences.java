package org.bandtrail.supplystock.counts;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;

/** What an approval asks of its reels and batches, as commands in the order of the postings. */
final class PostedDifferences {
    private final String reference;
    private final PersonId by;
    private final Occurred at;

    private PostedDifferences(CountEvent.Approved approved) {
        this.reference = "count " + approved.countId();
        this.by = approved.by();
        this.at = approved.occurred();
    }

    /** The commands; all of them or none are sent, in the work of the approval. */
    static List<Object> commands(CountEvent.Approved approved) {
        PostedDifferences differences = new PostedDifferences(approved);
        List<Object> commands = new ArrayList<>();
        for (Posting posting : approved.postings()) {
            commands.addAll(posting.holding().equals("reel") ? differences.reel(posting) : differences.batch(posting));
        }
        return commands;
    }

    private List<Object> reel(Posting posting) {
        ReelId reel = new ReelId(posting.id());
        return switch (posting.how()) {
            case ADJUSTED ->
                List.of(new ReelCommand.Adjust(
                        reel, posting.place(), posting.quantity(), reference, posting.reason(), by, at));
            case PUT_IN_BIN -> List.of(intoBin(reel, source(posting), posting));
            case BROUGHT_BACK -> {
                ReelCommand back = new ReelCommand.Return(
                        reel, person(posting), depot(posting), Length.ofMm(posting.quantity()), by, at);
                yield posting.place().bin() == null
                        ? List.of(back)
                        : List.of(back, intoBin(reel, Place.depot(depot(posting)), posting));
            }
        };
    }

    private ReelCommand intoBin(ReelId reel, Place from, Posting posting) {
        Length length = Length.ofMm(posting.quantity());
        return new ReelCommand.Relocate(
                reel, StockMove.PUT_IN_BIN, from, posting.place(), length, reference, posting.reason(), by, at);
    }

    private List<Object> batch(Posting posting) {
        BatchId batch = new BatchId(posting.id());
        return switch (posting.how()) {
            case ADJUSTED ->
                List.of(new BatchCommand.Adjust(
                        batch, posting.place(), posting.quantity(), reference, posting.reason(), by, at));
            case PUT_IN_BIN -> List.of(intoBin(batch, source(posting), posting));
            case BROUGHT_BACK -> {
                BatchCommand back = new BatchCommand.Return(
                        batch, person(posting), depot(posting), Pieces.of(posting.quantity()), by, at);
                yield posting.place().bin() == null
                        ? List.of(back)
                        : List.of(back, intoBin(batch, Place.depot(depot(posting)), posting));
            }
        };
    }

    private BatchCommand intoBin(BatchId batch, Place from, Posting posting) {
        Pieces pieces = Pieces.of(posting.quantity());
        return new BatchCommand.Relocate(
                batch, StockMove.PUT_IN_BIN, from, posting.place(), pieces, reference, posting.reason(), by, at);
    }

    private static PersonId person(Posting posting) {
        return new PersonId(source(posting).id());
    }

    private static Place source(Posting posting) {
        Place source = posting.source();
        if (source == null) {
            throw new IllegalStateException(
                    "Posting [%s] moves from nowhere. Look at who decided it.".formatted(posting));
        }
        return source;
    }

    private static DepotId depot(Posting posting) {
        DepotId depot = posting.place().depotId();
        if (depot == null) {
            throw new IllegalStateException("Posting [%s] is at no depot. Look at who decided it.".formatted(posting));
        }
        return depot;
    }
}
