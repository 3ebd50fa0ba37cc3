package org.bandtrail.supplystock.bins;

import java.util.List;

/**
 * The rules of a bin.
 *
 * @param marked whether it stands in its depot
 */
public record Bin(boolean marked) {
    /** A bin nobody has marked. */
    public static final Bin UNKNOWN = new Bin(false);

    /**
     * What a command makes happen.
     *
     * @throws BinRefused if the wish cannot be granted
     */
    public List<BinEvent> decide(BinCommand command) {
        return switch (command) {
            case BinCommand.Mark mark -> {
                if (marked) {
                    throw new BinRefused.BinMarkedAlready(mark.binId());
                }
                yield List.of(new BinEvent.Marked(mark.binId(), mark.words().strip(), mark.by(), mark.occurred()));
            }
        };
    }

    /** The bin after an event. */
    public Bin evolve(BinEvent event) {
        return switch (event) {
            case BinEvent.Marked _ -> new Bin(true);
        };
    }
}
