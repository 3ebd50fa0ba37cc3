package org.bandtrail.supplystock.items;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;

/** What happened to an item. */
public sealed interface ItemEvent {
    /** The item it happened to. */
    MaterialCode material();

    /** Registered for the programme. */
    @StoredAs("item.registered")
    @Revision("1")
    record Registered(MaterialCode material, ItemDescription description, Supply supply, PersonId by, Occurred occurred)
            implements ItemEvent {}

    /** What is said about it was corrected, for a reason; what lies in stock keeps the cost it was bought at. */
    @StoredAs("item.corrected")
    @Revision("1")
    record Corrected(MaterialCode material, ItemDescription description, String reason, PersonId by, Occurred occurred)
            implements ItemEvent {}

    /** Its supply figures changed, for a reason. */
    @StoredAs("item.supply-set")
    @Revision("1")
    record SupplySet(MaterialCode material, Supply supply, String reason, PersonId by, Occurred occurred)
            implements ItemEvent {}
}
