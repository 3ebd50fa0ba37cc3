package org.bandtrail.supplystock.recalls;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.jspecify.annotations.Nullable;

/** What happened to a recall. */
public sealed interface RecallEvent {
    /** The recall it happened to. */
    RecallId recallId();

    /**
     * A lot was recalled; from now on nothing of it is used.
     *
     * @param supplier whose lot; null in recalls of revision 1, which meant the lot of whichever supplier
     */
    @StoredAs("recall.started")
    @Revision("2")
    record Started(
            RecallId recallId, String lot, @Nullable SupplierId supplier, String reason, PersonId by, Occurred occurred)
            implements RecallEvent {}

    /** Goods of the lot went aside at their depots. */
    @StoredAs("recall.goods-set-aside")
    @Revision("1")
    record GoodsSetAside(RecallId recallId, String lot, List<AsideLine> lines, PersonId by, Occurred occurred)
            implements RecallEvent {}

    /** The recall was lifted; what it had set aside may be used again, as far as it is still there. */
    @StoredAs("recall.lifted")
    @Revision("1")
    record Lifted(RecallId recallId, String lot, String reason, List<AsideLine> lines, PersonId by, Occurred occurred)
            implements RecallEvent {}
}
