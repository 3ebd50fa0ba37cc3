package org.bandtrail.eventstore;

import java.util.Objects;
import java.util.stream.Stream;
import org.axonframework.eventhandling.EventData;
import org.axonframework.eventhandling.GenericDomainEventEntry;
import org.axonframework.serialization.SimpleSerializedObject;
import org.axonframework.serialization.upcasting.event.EventUpcaster;
import org.axonframework.serialization.upcasting.event.InitialEventRepresentation;
import org.axonframework.serialization.upcasting.event.IntermediateEventRepresentation;
import org.axonframework.serialization.upcasting.event.NoOpEventUpcaster;

/** Brings a stored event of any revision up to the record of today. */
final class Upcasting {
    private static final byte[] NO_META_DATA = "{}".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    private final StoredNameSerializer serializer;
    private final EventUpcaster upcasters;

    Upcasting(StoredNameSerializer serializer, EventUpcaster upcasters) {
        this.serializer = serializer;
        this.upcasters = upcasters;
    }

    /**
     * Reads one event.
     *
     * @throws IllegalStateException if no event has this stored name today
     */
    Object read(String name, String revision, byte[] payload) {
        Object event = upcasters == NoOpEventUpcaster.INSTANCE
                ? serializer.deserialize(new SimpleSerializedObject<>(payload, byte[].class, name, revision))
                : upcast(name, revision, payload);
        if (event == null || event instanceof org.axonframework.serialization.UnknownSerializedType) {
            throw new IllegalStateException(
                    "Stored event [%s, revision %s] has no record today. Keep its name in the code."
                            .formatted(name, revision));
        }
        return event;
    }

    private Object upcast(String name, String revision, byte[] payload) {
        EventData<byte[]> entry = new GenericDomainEventEntry<>(
                "event", "aggregate", 0, "event", java.time.Instant.EPOCH, name, revision, payload, NO_META_DATA);
        IntermediateEventRepresentation today = upcasters
                .upcast(Stream.of(new InitialEventRepresentation(entry, serializer)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("Upcasting dropped an event of " + name));
        return Objects.requireNonNull(serializer.deserialize(today.getData(byte[].class)));
    }
}
