package org.bandtrail.supplystock.counts;

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
import org.bandtrail.supplystock.holdings.StockMove;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.springframework.stereotype.Component;

/** Sends what an approval posts to its reels and batches, inside the work of the approval: all of it or none. */
@Component
class PostedDifferences {
    private final Commands commands;

    PostedDifferences(Commands commands) {
        this.commands = commands;
    }

    /** Posts one approval; call it inside a work. */
    void post(CountEvent.Approved approved) {
        String reference = "count " + approved.countId();
        for (Posting posting : approved.postings()) {
            if (posting.holding().equals("reel")) {
                reel(posting, reference, approved.by(), approved.occurred());
            } else {
                batch(posting, reference, approved.by(), approved.occurred());
            }
        }
    }

    private void reel(Posting posting, String reference, PersonId by, Occurred at) {
        ReelId reel = new ReelId(posting.id());
        switch (posting.how()) {
            case ADJUSTED ->
                commands.send(new ReelCommand.Adjust(
                        reel, posting.place(), posting.quantity(), reference, posting.reason(), by, at));
            case PUT_IN_BIN -> commands.send(reelIntoBin(reel, source(posting), posting, reference, by, at));
            case BROUGHT_BACK -> {
                PersonId person = new PersonId(source(posting).id());
                commands.send(new ReelCommand.Return(
                        reel, person, depot(posting), Length.ofMm(posting.quantity()), by, at));
                if (posting.place().bin() != null) {
                    commands.send(reelIntoBin(reel, Place.depot(depot(posting)), posting, reference, by, at));
                }
            }
        }
    }

    private static ReelCommand reelIntoBin(
            ReelId reel, Place from, Posting posting, String reference, PersonId by, Occurred at) {
        return new ReelCommand.Relocate(
                reel,
                StockMove.PUT_IN_BIN,
                from,
                posting.place(),
                Length.ofMm(posting.quantity()),
                reference,
                posting.reason(),
                by,
                at);
    }

    private void batch(Posting posting, String reference, PersonId by, Occurred at) {
        BatchId batch = new BatchId(posting.id());
        switch (posting.how()) {
            case ADJUSTED ->
                commands.send(new BatchCommand.Adjust(
                        batch, posting.place(), posting.quantity(), reference, posting.reason(), by, at));
            case PUT_IN_BIN -> commands.send(batchIntoBin(batch, source(posting), posting, reference, by, at));
            case BROUGHT_BACK -> {
                PersonId person = new PersonId(source(posting).id());
                commands.send(new BatchCommand.Return(
                        batch, person, depot(posting), Pieces.of(posting.quantity()), by, at));
                if (posting.place().bin() != null) {
                    commands.send(batchIntoBin(batch, Place.depot(depot(posting)), posting, reference, by, at));
                }
            }
        }
    }

    private static BatchCommand batchIntoBin(
            BatchId batch, Place from, Posting posting, String reference, PersonId by, Occurred at) {
        return new BatchCommand.Relocate(
                batch,
                StockMove.PUT_IN_BIN,
                from,
                posting.place(),
                Pieces.of(posting.quantity()),
                reference,
                posting.reason(),
                by,
                at);
    }

    private static Place source(Posting posting) {
        Place source = posting.source();
        if (source == null) {
            throw new IllegalStateException("Posting [%s] moves from nowhere. Look at who decided it.".formatted(posting));
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
