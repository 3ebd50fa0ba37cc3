package org.bandtrail.supplystock.handouts;

import java.util.List;

/**
 * The rules of a kit.
 *
 * @param out whether it was handed out
 */
public record Kit(boolean out) {
    /** A kit nobody has packed. */
    public static final Kit UNKNOWN = new Kit(false);

    /**
     * What a command makes happen.
     *
     * @throws KitRefused if the wish cannot be granted
     */
    public List<KitEvent> decide(KitCommand command) {
        return switch (command) {
            case KitCommand.HandOut wish -> {
                if (out) {
                    throw new KitRefused.KitAlreadyHandedOut(wish.kitId());
                }
                if (wish.lines().isEmpty()) {
                    throw new KitRefused.KitEmpty(wish.kitId());
                }
                yield List.of(new KitEvent.HandedOut(
                        wish.kitId(),
                        wish.depot(),
                        wish.crew(),
                        wish.person(),
                        wish.lines(),
                        wish.by(),
                        wish.occurred()));
            }
        };
    }

    /** The kit after an event. */
    public Kit evolve(KitEvent event) {
        return switch (event) {
            case KitEvent.HandedOut unused -> new Kit(true);
        };
    }
}
