package org.bandtrail.supplystock.reels;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** Words for tests about reels: one tape reel of 50 m for 18.00, one depot, two people, two sites. */
final class ReelSamples {
    static final ReelId REEL = new ReelId("R-0001");
    static final MaterialCode TAPE = new MaterialCode("TAPE-127");
    static final DepotId DEPOT = new DepotId("NORTH");
    static final PersonId KEEPER = new PersonId("P-01");
    static final PersonId ANNA = new PersonId("P-07");
    static final PersonId BORIS = new PersonId("P-08");
    static final SiteId SITE = new SiteId("S-01");
    static final TreeId TREE = new TreeId("T-0001");
    static final BagId BAG = new BagId("BAG-1");
    static final LoadId LOAD = new LoadId("LOAD-1");
    static final KitId KIT = new KitId("K-1");
    static final Occurred NOW = Occurred.at(Instant.parse("2026-05-04T08:00:00Z"));

    private ReelSamples() {}

    static ReelCommand.Receive receive(String length, long costMinor) {
        return receive(REEL, length, costMinor);
    }

    static ReelCommand.Receive receive(ReelId reel, String length, long costMinor) {
        return new ReelCommand.Receive(
                reel,
                TAPE,
                MaterialKind.TAPE,
                Length.parse(length),
                Money.of(costMinor, "USD"),
                Place.depot(DEPOT),
                KEEPER,
                NOW);
    }

    static ReelCommand.HandOut handOut(PersonId person) {
        return new ReelCommand.HandOut(REEL, KIT, DEPOT, person, KEEPER, NOW);
    }

    static ReelCommand.RecordFact fit(PersonId person, String length) {
        return fact(Place.crew(person), Place.tree(TREE), length, SITE);
    }

    static ReelCommand.RecordFact takeDown(String length) {
        return fact(Place.tree(TREE), Place.bag(BAG), length, SITE);
    }

    static ReelCommand.RecordFact dispose(String length) {
        return fact(Place.bag(BAG), Place.disposed(LOAD), length, null);
    }

    static ReelCommand.RecordFact fact(Place from, Place to, String length, @Nullable SiteId site) {
        return new ReelCommand.RecordFact(REEL, "fact", from, to, Length.parse(length), site, ANNA, NOW);
    }

    static ReelCommand.Return bringBack(PersonId person, String measured) {
        return new ReelCommand.Return(REEL, person, DEPOT, Length.parse(measured), KEEPER, NOW);
    }

    static ReelCommand.Settle settle(Place place) {
        return new ReelCommand.Settle(REEL, place, "looked everywhere", KEEPER, NOW);
    }

    /** The reel after these commands, all granted. */
    static Reel after(ReelCommand... commands) {
        Reel reel = Reel.UNKNOWN;
        for (ReelCommand command : commands) {
            reel = next(reel, command);
        }
        return reel;
    }

    static Reel next(Reel reel, ReelCommand command) {
        List<ReelEvent> events = reel.decide(command);
        for (ReelEvent event : events) {
            reel = reel.evolve(event);
        }
        return reel;
    }

    static long mm(Reel reel, Place place) {
        return reel.holding().at(place);
    }
}
