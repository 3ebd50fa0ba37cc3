package org.bandtrail.frontdesk.neighbours.depot;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What supply-stock says about where material came from and went, and about recalled lots. mm of reels, pieces of
 * batches.
 */
public final class Traced {
    private Traced() {}

    /**
     * Something that bears the identity that was asked for.
     *
     * @param supplierId whose lot; null for what is not a lot, and for a lot of whichever supplier
     */
    public record Found(String what, String id, @Nullable String supplierId) {}

    /** A trace in short. */
    public record Trace(
            String what,
            String id,
            @Nullable String supplierId,
            List<String> suppliers,
            long holdings,
            List<Origin> origins,
            List<Station> stations) {
        /** Whether the lot is that of several suppliers and none was chosen. */
        public boolean asksWhose() {
            return supplierId == null && suppliers.size() > 1;
        }

        /** How much tape and mesh is at a kind of place now, mm. */
        public long lengthAt(String... kinds) {
            List<String> asked = List.of(kinds);
            return stations.stream()
                    .filter(station -> asked.contains(station.kind()))
                    .mapToLong(Station::lengthMm)
                    .sum();
        }

        /** How many fasteners are at a kind of place now. */
        public long piecesAt(String... kinds) {
            List<String> asked = List.of(kinds);
            return stations.stream()
                    .filter(station -> asked.contains(station.kind()))
                    .mapToLong(Station::pieces)
                    .sum();
        }
    }

    /** One delivery behind a trace. */
    public record Origin(
            @Nullable String lot,
            String materialCode,
            String kind,
            String supplierId,
            @Nullable String purchaseId,
            String deliveryId,
            @Nullable LocalDate deliveredOn,
            @Nullable LocalDate expiresOn,
            long holdings,
            List<String> invoices) {}

    /** How much is at one kind of place. */
    public record Station(String kind, long placesNow, long placesEver, long lengthMm, long pieces) {}

    /** One reel or batch of a trace with its balance. */
    public record Part(
            String holding,
            String id,
            @Nullable String materialCode,
            @Nullable String kind,
            @Nullable String madeFrom,
            @Nullable String lot,
            @Nullable String deliveryId,
            @Nullable String purchaseId,
            long received,
            long setAside,
            long inDepot,
            long inVehiclesOrTransit,
            long withCrew,
            long onTree,
            long inBag,
            long disposed,
            long slit,
            long missing,
            long writtenOff) {}

    /** One reel or batch at one place, now or earlier. */
    public record At(
            String place,
            @Nullable String siteId,
            String holding,
            String id,
            @Nullable String materialCode,
            @Nullable String lot,
            long quantity,
            @Nullable Instant firstAt,
            @Nullable String by) {
        /** The unit of the quantity, as the sheets write it. */
        public String unit() {
            return holding.equals("reel") ? "mm" : "pieces";
        }
    }

    /** One recall. */
    public record Recall(
            String recallId,
            String lot,
            @Nullable String supplierId,
            String reason,
            String by,
            @Nullable Instant startedAt,
            long holdings,
            long lengthMm,
            long pieces,
            @Nullable Instant liftedAt,
            @Nullable String liftedBy,
            @Nullable String liftReason) {}

    /** A recall with where the lot is; no trace while nothing of the lot is in the books. */
    public record Recalled(Recall recall, @Nullable Trace trace) {}
}
