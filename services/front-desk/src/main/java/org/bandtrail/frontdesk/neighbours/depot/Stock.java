package org.bandtrail.frontdesk.neighbours.depot;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/** What supply-stock says. Lengths in mm, fasteners in pieces, money in minor units. */
public final class Stock {
    private Stock() {}

    /** A supply item. Lead time and service level are null until somebody set them. */
    public record Item(
            String materialCode,
            String kind,
            String name,
            @Nullable Long widthMm,
            @Nullable Long openingMm,
            @Nullable Long reelLengthMm,
            @Nullable Long packSize,
            @Nullable Money unitCost,
            @Nullable Double leadTimeDays,
            @Nullable Double leadTimeSdDays,
            @Nullable Long serviceLevelPermille) {}

    /** A depot. */
    public record Depot(String depotId, String name) {}

    /** A crew and who belongs to it. */
    public record Crew(
            String crewId,
            String name,
            @Nullable String depotId,
            @Nullable List<String> people) {}

    /**
     * A reel and where its millimetres are.
     *
     * @param slitMm what was slit into narrower reels; negative on a reel that was made by slitting
     */
    public record Reel(
            String reelId,
            @Nullable String materialCode,
            @Nullable String kind,
            long receivedMm,
            long inDepotMm,
            long withCrewMm,
            long onTreeMm,
            long inBagMm,
            long disposedMm,
            long writtenOffMm,
            long missingMm,
            long setAsideMm,
            long inVehicleMm,
            long inTransitMm,
            long slitMm,
            @Nullable String place,
            @Nullable Money cost,
            @Nullable Money charged,
            @Nullable String lastHolder,
            @Nullable Instant lastMovedAt) {}

    /** A reel with every place that holds some of it, and its history, oldest first. */
    public record WholeReel(Reel balance, List<PlaceBalance> places, List<Step> history) {}

    /** A batch of fasteners and where its pieces are. */
    public record Batch(
            String batchId,
            @Nullable String materialCode,
            @Nullable String kind,
            long receivedPieces,
            long inDepotPieces,
            long withCrewPieces,
            long onTreePieces,
            long inBagPieces,
            long disposedPieces,
            long writtenOffPieces,
            long missingPieces,
            long setAsidePieces,
            long inVehiclePieces,
            long inTransitPieces,
            @Nullable String place,
            @Nullable Money cost,
            @Nullable Money charged,
            @Nullable String lastHolder,
            @Nullable Instant lastMovedAt) {}

    /** A batch with every place that holds some of it, and its history, oldest first. */
    public record WholeBatch(Batch balance, List<PlaceBalance> places, List<Step> history) {}

    /** How much of one reel (mm) or batch (pieces) is at one place; negative where the field took more. */
    public record PlaceBalance(String place, long quantity) {}

    /**
     * One line of a reel's or batch's history.
     *
     * @param quantity mm or pieces; 0 on a line that only carries a charge
     * @param account the site that pays, or null
     */
    public record Step(
            String what,
            @Nullable String note,
            @Nullable String source,
            @Nullable String target,
            long quantity,
            @Nullable String account,
            long costMinor,
            @Nullable String by,
            @Nullable Instant happenedAt,
            @Nullable Instant recordedAt) {

        /** Tells whether this was recorded more than a day after it happened. */
        public boolean late() {
            return happenedAt != null
                    && recordedAt != null
                    && recordedAt.isAfter(happenedAt.plus(java.time.Duration.ofDays(1)));
        }
    }

    /**
     * A kit handed out.
     *
     * @param open whether the person still has anything of it
     */
    public record Handout(
            String kitId,
            String depotId,
            @Nullable String crewId,
            String personId,
            @Nullable Instant handedOutAt,
            boolean open,
            List<KitLine> reels,
            List<KitLine> batches) {}

    /** A reel (mm) or batch (pieces) in a kit: what was handed out, and what the person has of it by the books. */
    public record KitLine(
            String id,
            @Nullable String materialCode,
            @Nullable String kind,
            long handedOut,
            long stillOut) {}

    /** What came back against what the books expected. */
    public record Returned(List<ReturnLine> lines) {}

    /** One reel in mm or one batch in pieces. */
    public record ReturnLine(String id, long expected, long found, long difference) {}

    /**
     * The trail: where all tape and mesh (mm) and all fasteners (pieces) are.
     *
     * @param unknown what the field used of reels and batches whose receipt is not in the books
     */
    public record Trail(Along tape, Along mesh, Along fasteners, Along unknown) {}

    /**
     * How much is at each station; received is the sum of the others. Negative where the field took more.
     *
     * @param slit what wide reels lost to narrow ones, less the length of the narrow ones: below zero, as strips add up
     *     to more length than the reel they come from
     */
    public record Along(
            long received,
            long setAside,
            long depot,
            long transit,
            long vehicle,
            long crew,
            long tree,
            long bag,
            long disposed,
            long slit,
            long missing,
            long writtenOff) {}

    /** What is at one place. */
    public record AtPlace(String place, long tapeMm, long meshMm, long pieces) {}

    /** What hangs on the trees of one site. */
    public record AtSite(String siteId, long trees, long tapeMm, long meshMm, long pieces) {}
}
