package org.bandtrail.supplystock.kits;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.CrewId;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.KitId;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * One kit as people see it.
 *
 * @param state reserved, lapsed, released, out or settled
 * @param beganAt reserved, or handed out at once
 * @param until when the reservation lapses, or null if it was handed out at once
 * @param settledAt when nothing of it was out any more, or null
 * @param reopened how often a fact told late changed it after it was settled
 * @param reopenedAt when the books learnt of the last such fact, or null
 * @param rule by which lengths followed from girths, in words, or null
 */
record KitLife(
        String kitId,
        String depotId,
        String crewId,
        String personId,
        String state,
        Instant beganAt,
        @Nullable Instant reservedAt,
        @Nullable Instant until,
        @Nullable Instant releasedAt,
        @Nullable String releaseReason,
        @Nullable Instant handedOutAt,
        @Nullable String handedOutBy,
        @Nullable Instant signedAt,
        @Nullable String signedBy,
        @Nullable Instant settledAt,
        int reopened,
        @Nullable Instant reopenedAt,
        @Nullable String rule) {

    DepotId depot() {
        return new DepotId(depotId);
    }

    CrewId crew() {
        return new CrewId(crewId);
    }

    PersonId person() {
        return new PersonId(personId);
    }

    KitId kit() {
        return new KitId(kitId);
    }

    /**
     * What one tree takes.
     *
     * @param tapeMm each piece; likewise meshMm
     * @param fasteners pieces for the whole tree
     */
    record Tree(String treeId, @Nullable Long girthMm, int bands, long tapeMm, long meshMm, long fasteners) {}

    /**
     * What is picked.
     *
     * @param bin where it lay, or null if it lay loose in the depot
     * @param there millimetres or pieces that lay there
     * @param quantity millimetres or pieces the trees take
     */
    record Picked(
            String id,
            String materialCode,
            MaterialKind kind,
            @Nullable String bin,
            long there,
            long quantity,
            List<CutFor> cuts) {}

    /** What is cut for one tree; length of each piece in millimetres. */
    record CutFor(String treeId, int pieces, long eachMm) {}
}
