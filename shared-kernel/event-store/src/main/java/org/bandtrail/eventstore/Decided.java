package org.bandtrail.eventstore;

import java.util.List;
import org.axonframework.modelling.command.AggregateLifecycle;

/** The only thing an aggregate shell does: apply what the rules decided, and say what that was. */
public final class Decided {
    private Decided() {}

    /** Applies the events to the aggregate that is handling a command now and returns them. */
    public static <E> List<E> applied(List<E> events) {
        events.forEach(AggregateLifecycle::apply);
        return events;
    }
}
