package org.bandtrail.supplystock.recalls;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to a recall. */
public sealed interface RecallEvent {
    /** The recall it happened to. */
    RecallId recallId();

    /** A lot was recalled; from now on nothing of it is used. */
    @StoredAs("recall.started")
    @Revision("1")
    record Started(RecallId recallId, String lot, String reason, PersonId by, Occurred occurred)
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
