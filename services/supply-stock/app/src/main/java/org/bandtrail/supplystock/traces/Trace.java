package org.bandtrail.supplystock.traces;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A trace in short: where it comes from and where it went.
 *
 * @param what lot, reel, batch, tree, bag or load
 * @param id what was asked for
 * @param supplierId whose lot was asked for, null if only the lot was given, and for what is not a lot
 * @param suppliers all that delivered something under this lot; more than one: ask which is meant
 * @param holdings how many reels and batches it concerns
 * @param origins deliveries behind it, the oldest first
 * @param stations how much is at each kind of place, in the order of the trail; empty for a trace that only goes back
 */
public record Trace(
        String what,
        String id,
        @Nullable String supplierId,
        List<String> suppliers,
        long holdings,
        List<Origin> origins,
        List<Station> stations) {

    /**
     * One delivery of one material under one lot.
     *
     * @param lot the maker's lot, null if none was stated
     * @param holdings how many reels or batches of this trace come from it, strips included
     * @param invoices identities of invoices that billed it
     */
    public record Origin(
            @Nullable String lot,
            String materialCode,
            String kind,
            String supplierId,
            @Nullable String purchaseId,
            String deliveryId,
            LocalDate deliveredOn,
            @Nullable LocalDate expiresOn,
            long holdings,
            List<String> invoices) {}

    /**
     * One kind of place.
     *
     * @param kind its word, such as {@code tree}
     * @param placesNow places that hold something of it
     * @param placesEver places that hold or held something of it
     * @param lengthMm tape and mesh there now, millimetres; negative if more was taken than the books knew
     * @param pieces fasteners there now
     */
    public record Station(String kind, long placesNow, long placesEver, long lengthMm, long pieces) {}

    /**
     * One reel or batch of a trace.
     *
     * @param holding {@code reel} or {@code batch}
     * @param materialCode null while only the field has heard of it
     * @param madeFrom the reel it was slit from, or null
     * @param lot the lot, inherited through slitting, or null
     * @param received millimetres or pieces, as all that follow
     * @param inVehiclesOrTransit in vehicles or on the way
     */
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

    /**
     * One reel or batch at one place, now or earlier.
     *
     * @param place text form of the place
     * @param siteId site of the tree, or null
     * @param quantity there now, millimetres or pieces; 0 if it is gone
     * @param firstAt when it first came there, or null if only taken from there
     * @param by who told that, or null
     */
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
        /** Where the next page begins. */
        public String cursor() {
            return place + "|" + holding + "|" + id;
        }
    }

    /**
     * Something that bears the identity that was asked for.
     *
     * @param supplierId of a lot, null for everything else
     */
    public record Found(String what, String id, @Nullable String supplierId) {}
}
