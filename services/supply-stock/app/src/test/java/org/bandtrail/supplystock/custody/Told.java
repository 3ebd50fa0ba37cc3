package org.bandtrail.supplystock.custody;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.bandtrail.eventstore.StoredEvent;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.Reel;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.bandtrail.supplystock.reels.ReelEvent;
import org.bandtrail.supplystock.reels.ReelRefused;

/** One reel as the books tell of it: commands in, custody out. Hours count from the start of one morning. */
final class Told {
    static final PersonId ANNA = new PersonId("P-07");
    static final DepotId DEPOT = new DepotId("NORTH");
    private static final ReelId REEL = new ReelId("R-1");
    private static final PersonId KEEPER = new PersonId("P-01");
    private static final Instant MORNING = Instant.parse("2026-05-04T06:00:00Z");

    private final List<CustodyStep> steps = new ArrayList<>();
    private Reel reel = Reel.UNKNOWN;
    private long position;

    Told(long mm) {
        tell(new ReelCommand.Receive(
                REEL,
                new MaterialCode("TAPE-127"),
                MaterialKind.TAPE,
                Length.ofMm(mm),
                Money.of(1_800, "USD"),
                Place.depot(DEPOT),
                KEEPER,
                at(0)));
    }

    Told handOut(String kit, int hour) {
        return handOut(kit, ANNA, hour);
    }

    Told handOut(String kit, PersonId person, int hour) {
        return tell(new ReelCommand.HandOut(REEL, new KitId(kit), DEPOT, person, KEEPER, at(hour)));
    }

    Told fit(PersonId person, long mm, int hour) {
        return fact(Place.crew(person), Place.tree(new TreeId("T-1")), mm, hour);
    }

    Told scrap(PersonId person, long mm, int hour) {
        return fact(Place.crew(person), Place.bag(new BagId("BAG-1")), mm, hour);
    }

    Told fact(Place from, Place to, long mm, int hour) {
        return tell(new ReelCommand.RecordFact(REEL, "band B-1", from, to, Length.ofMm(mm), null, ANNA, at(hour)));
    }

    Told bringBack(PersonId person, long mm, int hour) {
        return tell(new ReelCommand.Return(REEL, person, DEPOT, Length.ofMm(mm), KEEPER, at(hour)));
    }

    Told settle(PersonId person) {
        return tell(new ReelCommand.Settle(REEL, Place.missing(person), "looked everywhere", KEEPER, at(99)));
    }

    /** A wish that is refused changes nothing. */
    Told tell(ReelCommand command) {
        try {
            for (ReelEvent event : reel.decide(command)) {
                reel = reel.evolve(event);
                position++;
                steps.addAll(CustodyMoves.of(
                        new StoredEvent(position, new UUID(0, position), "reel/" + REEL, position - 1, event)));
            }
        } catch (ReelRefused refused) {
            position++;
        }
        return this;
    }

    Reel reel() {
        return reel;
    }

    List<CustodyStep> steps() {
        return steps;
    }

    Settling settling() {
        return Settling.of(steps);
    }

    Settlement kit(String kit) {
        return settling().lines(kit).values().stream().reduce(Settlement.NOTHING, Settlement::plus);
    }

    private static Occurred at(int hour) {
        return Occurred.at(MORNING.plusSeconds(3_600L * hour));
    }
}
