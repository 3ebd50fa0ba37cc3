package org.bandtrail.local.season;

import java.time.Duration;
import org.bandtrail.local.doors.FrontDoor;
import org.bandtrail.local.doors.Hearing;
import org.bandtrail.local.doors.SeasonStopped;
import tools.jackson.databind.JsonNode;

/** One reel's balance in the books, waited for until it is what the plan says. */
record ForestBalance(FrontDoor supplyStock, String reelId) {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    /**
     * Returns when the balance is as given and everything else of the reel is disposed of.
     *
     * @throws SeasonStopped showing the balance if it is not after half a minute
     */
    void mustBe(long receivedMm, long depotMm, long treesMm) {
        long disposedMm = receivedMm - depotMm - treesMm;
        long giveUp = System.nanoTime() + PATIENCE.toNanos();
        JsonNode balance = read();
        while (!is(balance, receivedMm, depotMm, treesMm, disposedMm)) {
            if (System.nanoTime() > giveUp) {
                throw new SeasonStopped("%s should be %d mm received, %d in the depot, %d on trees, %d disposed of; %s"
                        .formatted(reelId, receivedMm, depotMm, treesMm, disposedMm, balance));
            }
            Hearing.pause();
            balance = read();
        }
    }

    private JsonNode read() {
        return supplyStock
                .get("/reels/" + reelId, ForestInventoryRun.KEEPER, reelId)
                .path("balance");
    }

    private static boolean is(JsonNode balance, long received, long depot, long trees, long disposed) {
        return balance.path("receivedMm").asLong() == received
                && balance.path("inDepotMm").asLong() == depot
                && balance.path("onTreeMm").asLong() == trees
                && balance.path("disposedMm").asLong() == disposed
                && balance.path("withCrewMm").asLong() == 0
                && balance.path("missingMm").asLong() == 0;
    }
}
