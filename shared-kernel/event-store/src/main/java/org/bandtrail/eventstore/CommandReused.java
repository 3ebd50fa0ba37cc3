package org.bandtrail.eventstore;

import java.util.UUID;

/** The same command id came again with other content. Nothing was done the second time. */
public final class CommandReused extends Refusal {
    private static final long serialVersionUID = 1L;

    CommandReused(UUID commandId) {
        super("Command id [%s] was used before for a different request. Send a new request with a new id."
                .formatted(commandId));
    }

    @Override
    public int status() {
        return 422;
    }
}
