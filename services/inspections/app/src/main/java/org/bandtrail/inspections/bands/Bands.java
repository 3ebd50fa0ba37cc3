package org.bandtrail.inspections.bands;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.inspections.bags.BagCommand;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.kernel.BagId;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Tells bands what happened and, in the same transaction, the bags what went into them. */
@Component
public class Bands {
    private final Commands commands;

    Bands(Commands commands) {
        this.commands = commands;
    }

    /**
     * Tells one band, inside the caller's work.
     *
     * @return what became known; empty if it was known before
     * @throws BandRefused if the identity already names another fact
     */
    @SuppressWarnings("unchecked")
    public List<BandEvent> tell(BandCommand command) {
        List<BandEvent> events = (List<BandEvent>) commands.ask(command);
        if (events == null) {
            throw new IllegalStateException("Band [%s] gave no answer.".formatted(command.band()));
        }
        events.forEach(this::noteContents);
        return events;
    }

    private void noteContents(BandEvent event) {
        Map<String, List<Move>> byBag = new TreeMap<>();
        for (Move move : event.moves()) {
            addTo(byBag, move.bagFilled(), move);
            addTo(byBag, move.bagEmptied(), move);
        }
        byBag.forEach((bag, moves) ->
                commands.send(new BagCommand.NoteContents(new BagId(bag), moves, event.doer(), event.occurred())));
    }

    private static void addTo(Map<String, List<Move>> byBag, @Nullable String bag, Move move) {
        if (bag != null) {
            byBag.computeIfAbsent(bag, unused -> new ArrayList<>()).add(move);
        }
    }
}
