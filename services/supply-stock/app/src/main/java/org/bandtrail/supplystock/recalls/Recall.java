package org.bandtrail.supplystock.recalls;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a recall.
 *
 * @param lot the maker's lot, null until started
 * @param open whether nothing of the lot may be used
 * @param aside what it set aside, by reel or batch and depot
 */
public record Recall(@Nullable String lot, boolean open, SortedMap<String, AsideLine> aside) {
    /** A recall nobody has started. */
    public static final Recall UNKNOWN = new Recall(null, false, new TreeMap<>());

    /**
     * What a command makes happen.
     *
     * @throws RecallRefused if the wish cannot be granted
     */
    public List<RecallEvent> decide(RecallCommand command) {
        return switch (command) {
            case RecallCommand.Start start -> start(start);
            case RecallCommand.RecordAside told ->
                told.lines().isEmpty()
                        ? List.of()
                        : List.of(new RecallEvent.GoodsSetAside(
                                told.recallId(), lotOfOpen(told.recallId()), told.lines(), told.by(), told.occurred()));
            case RecallCommand.Lift lift -> {
                String which = lotOfOpen(lift.recallId());
                requireReason(lift.recallId(), lift.reason());
                yield List.of(new RecallEvent.Lifted(
                        lift.recallId(),
                        which,
                        lift.reason().strip(),
                        List.copyOf(aside.values()),
                        lift.by(),
                        lift.occurred()));
            }
        };
    }

    private List<RecallEvent> start(RecallCommand.Start start) {
        if (lot != null) {
            throw new RecallRefused.RecallKnownAlready(start.recallId(), lot);
        }
        if (start.lot().isBlank()) {
            throw new RecallRefused.LotMissing(start.recallId());
        }
        requireReason(start.recallId(), start.reason());
        return List.of(new RecallEvent.Started(
                start.recallId(), start.lot(), start.supplier(), start.reason().strip(), start.by(), start.occurred()));
    }

    private String lotOfOpen(RecallId recall) {
        if (lot == null || !open) {
            throw new RecallRefused.NotOpen(recall);
        }
        return lot;
    }

    private static void requireReason(RecallId recall, String reason) {
        if (reason.isBlank()) {
            throw new RecallRefused.ReasonMissing(recall);
        }
    }

    /** The recall after an event. */
    public Recall evolve(RecallEvent event) {
        return switch (event) {
            case RecallEvent.Started started -> new Recall(started.lot(), true, aside);
            case RecallEvent.GoodsSetAside more -> {
                TreeMap<String, AsideLine> lines = new TreeMap<>(aside);
                more.lines().forEach(line -> lines.merge(line.key(), line, Recall::sum));
                yield new Recall(lot, open, lines);
            }
            case RecallEvent.Lifted _ -> new Recall(lot, false, aside);
        };
    }

    private static AsideLine sum(AsideLine one, AsideLine other) {
        return new AsideLine(one.holding(), one.id(), one.depot(), one.quantity() + other.quantity());
    }
}
