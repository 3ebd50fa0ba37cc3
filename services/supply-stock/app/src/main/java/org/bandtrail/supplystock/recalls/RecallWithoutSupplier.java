package org.bandtrail.supplystock.recalls;

import org.axonframework.serialization.SimpleSerializedType;
import org.axonframework.serialization.upcasting.event.IntermediateEventRepresentation;
import org.axonframework.serialization.upcasting.event.SingleEventUpcaster;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Brings a recall of revision 1, which named a lot alone, to revision 2: a lot of whichever supplier. */
final class RecallWithoutSupplier extends SingleEventUpcaster {
    private static final String NAME = "recall.started";
    private static final SimpleSerializedType BEFORE = new SimpleSerializedType(NAME, "1");

    @Override
    protected boolean canUpcast(IntermediateEventRepresentation event) {
        return BEFORE.equals(event.getType());
    }

    @Override
    protected IntermediateEventRepresentation doUpcast(IntermediateEventRepresentation event) {
        return event.upcastPayload(
                new SimpleSerializedType(NAME, "2"), JsonNode.class, old -> ((ObjectNode) old).putNull("supplier"));
    }
}
