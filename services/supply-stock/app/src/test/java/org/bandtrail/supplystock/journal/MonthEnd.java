package org.bandtrail.supplystock.journal;

import java.time.Instant;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;

/** One reel of three metres for 10.00, and bands of one metre that are told on 10 July. */
final class MonthEnd {
    private static final PersonId WREN = new PersonId("P-07");
    private static final ReelId REEL = new ReelId("ME-R1");

    private MonthEnd() {}

    static ReelCommand received(String when) {
        return new ReelCommand.Receive(
                REEL,
                new MaterialCode("ME-TAPE"),
                MaterialKind.TAPE,
                Length.ofMm(3_000),
                Money.of(10_00, "USD"),
                Place.depot(new DepotId("ME")),
                WREN,
                Occurred.at(Instant.parse(when)));
    }

    static ReelCommand fitted(String when) {
        return new ReelCommand.RecordFact(
                REEL,
                "band of " + when,
                Place.crew(WREN),
                Place.tree(new TreeId("ME-T1")),
                Length.ofMm(1_000),
                new SiteId("ME-MILL"),
                WREN,
                new Occurred(Instant.parse(when), Instant.parse("2026-07-10T12:00:00Z")));
    }
}
