package org.bandtrail.supplystock.depots;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a depot.
 *
 * @param name what people call it, null until opened
 */
public record Depot(@Nullable String name) {
    /** A depot nobody has opened. */
    public static final Depot UNKNOWN = new Depot(null);

    /**
     * What a command makes happen.
     *
     * @throws DepotRefused if the wish cannot be granted
     */
    public List<DepotEvent> decide(DepotCommand command) {
        return switch (command) {
            case DepotCommand.Open open -> {
                if (name != null) {
                    throw new DepotRefused.DepotOpenAlready(open.depotId(), name);
                }
                if (open.name().isBlank()) {
                    throw new DepotRefused.DepotWithoutName(open.depotId());
                }
                yield List.of(new DepotEvent.Opened(open.depotId(), open.name().strip(), open.by(), open.occurred()));
            }
        };
    }

    /** The depot after an event. */
    public Depot evolve(DepotEvent event) {
        return switch (event) {
            case DepotEvent.Opened opened -> new Depot(opened.name());
        };
    }
}
