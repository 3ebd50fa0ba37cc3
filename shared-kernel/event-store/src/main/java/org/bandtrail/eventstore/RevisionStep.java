package org.bandtrail.eventstore;

import java.util.function.Consumer;
import org.axonframework.serialization.SimpleSerializedType;
import org.axonframework.serialization.upcasting.event.IntermediateEventRepresentation;
import org.axonframework.serialization.upcasting.event.SingleEventUpcaster;
import org.springframework.core.Ordered;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Brings stored events of one name from one revision to the next while they are read; what is on disk stays as it was.
 * Declared as a bean by the feature that owns the event. Steps of one event follow each other by revision.
 */
public final class RevisionStep extends SingleEventUpcaster implements Ordered {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private final String storedName;
    private final int from;
    private final Consumer<ObjectNode> change;

    /**
     * A step to the revision after {@code from}.
     *
     * @param storedName as in {@link StoredAs}
     * @param from the revision that is read, 1 or more
     * @param change makes the JSON of the next revision out of that of this one
     */
    public RevisionStep(String storedName, int from, Consumer<ObjectNode> change) {
        this.storedName = storedName;
        this.from = from;
        this.change = change;
    }

    @Override
    public int getOrder() {
        return from;
    }

    @Override
    protected boolean canUpcast(IntermediateEventRepresentation event) {
        return event.getType().getName().equals(storedName)
                && Integer.toString(from).equals(event.getType().getRevision());
    }

    @Override
    protected IntermediateEventRepresentation doUpcast(IntermediateEventRepresentation event) {
        return event.upcastPayload(
                new SimpleSerializedType(storedName, Integer.toString(from + 1)), byte[].class, this::changed);
    }

    private byte[] changed(byte[] stored) {
        ObjectNode payload = (ObjectNode) JSON.readTree(stored);
        change.accept(payload);
        return JSON.writeValueAsBytes(payload);
    }
}
