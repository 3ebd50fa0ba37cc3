package org.bandtrail.eventstore;

import java.util.List;

/**
 * A read model fed from the event store a page at a time. {@link #apply} runs in one transaction with the position, so
 * every event counts exactly once. SQL names its tables without a schema: a rebuild runs the same statements against
 * fresh copies in another schema while people go on reading the old rows, and then swaps.
 */
public interface Projection {
    /** Name of the projection, for ever; its position is kept under it. */
    String name();

    /** The tables it owns, in an order in which they can be copied. */
    List<String> tables();

    /** The sealed event interfaces it listens to. */
    List<Class<?>> listensTo();

    /** Writes the page, by sets. The page holds only events it listens to, in the order of the store. */
    void apply(List<StoredEvent> page);
}
