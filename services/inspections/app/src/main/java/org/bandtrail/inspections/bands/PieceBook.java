package org.bandtrail.inspections.bands;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.inspections.bands.BandEvent.PlacesSettled;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.inspections.pieces.Whereabouts;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;

/**
 * Everything done to the pieces of one band, as it was told.
 *
 * @param facts in the order in which they were told
 * @param doers who did each, by the fact's identity
 */
public record PieceBook(List<PieceFact> facts, Map<String, Doer> doers) {
    static final PieceBook EMPTY = new PieceBook(List.of(), Map.of());

    public PieceBook {
        facts = List.copyOf(facts);
        doers = Map.copyOf(doers);
    }

    /** Where the band hangs by the fitting told last, or null while no fitting is known. */
    @Nullable
    Trunk trunk() {
        return facts.reversed().stream()
                .map(PieceFact::trunk)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** What hangs on the tree, as far as is known. */
    List<Portion> hanging() {
        return Whereabouts.hanging(facts);
    }

    /** The book with one more fact. */
    PieceBook with(PieceFact fact, Doer doer) {
        List<PieceFact> more = new ArrayList<>(facts);
        more.add(fact);
        Map<String, Doer> moreDoers = new HashMap<>(doers);
        moreDoers.put(fact.id(), doer);
        return new PieceBook(more, moreDoers);
    }

    /**
     * Tells whether the fact is known.
     *
     * @param fact what was done under this identity, null if nothing was done to the pieces
     * @throws BandRefused if the identity names another fact
     */
    boolean knows(BandId band, String id, @Nullable PieceFact fact) {
        for (PieceFact known : facts) {
            if (known.id().equals(id) && !known.equals(fact)) {
                throw new BandRefused.IdentityTaken(band, id);
            }
        }
        return fact != null && facts.contains(fact);
    }

    /** The moves that one more fact makes known, by the fact they belong to. */
    Map<PieceFact, List<Move>> learn(PieceFact arriving) {
        return Whereabouts.learn(facts, arriving);
    }

    /** Of these moves those that belong to facts told before, each told under its own fact. */
    List<BandEvent> settled(
            BandId band,
            PieceFact arriving,
            @Nullable Trunk trunk,
            Map<PieceFact, List<Move>> moves,
            Occurred occurred) {
        List<BandEvent> events = new ArrayList<>();
        moves.forEach((fact, known) -> {
            Doer doer = doers.get(fact.id());
            if (doer != null && !fact.equals(arriving)) {
                Occurred settled = new Occurred(fact.happened(), occurred.recorded());
                events.add(new PlacesSettled(band, fact.id(), fact.kind(), trunk, known, doer, settled));
            }
        });
        return events;
    }
}
