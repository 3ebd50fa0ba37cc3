package org.bandtrail.supplystock.contract.v1;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What lies in a depot became more or less: received, handed out, brought back, put in another bin, set aside, slit,
 * written off or corrected. A reader adds the changes; what lies at a place is their sum, in whatever order they came.
 *
 * @param holding {@code reel} or {@code batch}
 * @param id the reel's or batch's identity
 * @param changes at least one, each place once
 * @param receipt what it is, told once when it is received or made by slitting, otherwise null
 * @param happenedAt when it happened
 * @param recordedAt when supply-stock learnt of it
 * @param by who did it
 */
public record DepotStockChanged(
        String holding,
        String id,
        List<Change> changes,
        @Nullable Receipt receipt,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "supply-stock.depot-stock-changed.v1";

    /** Keeps its own copy of the changes. */
    public DepotStockChanged {
        changes = List.copyOf(changes);
    }

    /** What the event is about: the reel or batch. Order is kept per subject. */
    public String subject() {
        return holding + "/" + id;
    }

    /**
     * One place of a depot.
     *
     * @param bin null if it lies loose in the depot or is set aside
     * @param setAside whether it is there but not to be used
     * @param change millimetres of a reel or pieces of a batch, below zero if it became less, never zero
     */
    public record Change(String depotId, @Nullable String bin, boolean setAside, long change) {}

    /**
     * What it is.
     *
     * @param kind {@code TAPE}, {@code MESH} or {@code FASTENER}
     * @param quantity millimetres or pieces received
     * @param costMinor what all of it cost then, in the currency's smallest unit
     * @param currency ISO 4217
     */
    public record Receipt(String materialCode, String kind, long quantity, long costMinor, String currency) {}
}
