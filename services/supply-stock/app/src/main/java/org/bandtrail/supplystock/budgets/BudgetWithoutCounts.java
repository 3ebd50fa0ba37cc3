package org.bandtrail.supplystock.budgets;

import org.axonframework.serialization.SimpleSerializedType;
import org.axonframework.serialization.upcasting.event.IntermediateEventRepresentation;
import org.axonframework.serialization.upcasting.event.SingleEventUpcaster;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Brings a budget of revision 1, which counted what sites were charged, to revision 2, which says so. */
final class BudgetWithoutCounts extends SingleEventUpcaster {
    private static final String NAME = "budget.set";
    private static final SimpleSerializedType BEFORE = new SimpleSerializedType(NAME, "1");

    @Override
    protected boolean canUpcast(IntermediateEventRepresentation event) {
        return BEFORE.equals(event.getType());
    }

    @Override
    protected IntermediateEventRepresentation doUpcast(IntermediateEventRepresentation event) {
        return event.upcastPayload(new SimpleSerializedType(NAME, "2"), JsonNode.class, old -> {
            ((ObjectNode) old.path("plan")).put("counts", Counts.CHARGED.name());
            return old;
        });
    }
}
