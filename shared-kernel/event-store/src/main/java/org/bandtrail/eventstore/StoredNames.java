package org.bandtrail.eventstore;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.axonframework.serialization.Revision;
import org.jspecify.annotations.Nullable;

/** The two-way table between event records and their stored names, read from the sealed event interfaces. */
public final class StoredNames {
    private final Map<String, Class<?>> classes = new HashMap<>();
    private final Map<Class<?>, String> names = new HashMap<>();

    /**
     * Collects the names of all events of these aggregates.
     *
     * @throws IllegalStateException if an event has no stored name or revision, or two events share a name
     */
    public StoredNames(Collection<? extends AggregateOf<?>> aggregates) {
        aggregates.forEach(aggregate -> {
            for (Class<?> event : aggregate.events().getPermittedSubclasses()) {
                add(event);
            }
        });
    }

    private void add(Class<?> event) {
        StoredAs stored = event.getAnnotation(StoredAs.class);
        if (stored == null || event.getAnnotation(Revision.class) == null) {
            throw new IllegalStateException(
                    "Event [%s] has no @StoredAs or no @Revision. Give it both before it is written.".formatted(event));
        }
        Class<?> other = classes.put(stored.value(), event);
        if (other != null) {
            throw new IllegalStateException("Stored name [%s] belongs to %s and to %s. Rename the newer one."
                    .formatted(stored.value(), other, event));
        }
        names.put(event, stored.value());
    }

    /** The stored name of an event class, or null if it is not an event. */
    public @Nullable String nameOf(Class<?> event) {
        return names.get(event);
    }

    /** The event class of a stored name, or null if no event has it. */
    public @Nullable Class<?> classOf(String name) {
        return classes.get(name);
    }

    /** All stored names. */
    public Collection<String> all() {
        return classes.keySet();
    }
}
