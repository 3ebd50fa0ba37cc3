package org.bandtrail.inspections.bands;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.inspections.pieces.PieceFact;
import org.bandtrail.inspections.pieces.Portion;
import org.bandtrail.inspections.pieces.Trunk;
import org.bandtrail.inspections.sightings.Look;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Occurred;
import org.jspecify.annotations.Nullable;

/** What happened to a band, in the order of its life. The trunk is null while no fitting is known. */
public sealed interface BandEvent {
    /** The band. */
    BandId band();

    /** Who did it and who told it. */
    Doer doer();

    /** When it was done and when this service learnt of it. */
    Occurred occurred();

    /** What changed place by it, as far as this service tells it. */
    default List<Move> moves() {
        return List.of();
    }

    /** Site-installs told that the band hangs, with these pieces. */
    @StoredAs("band.fitting-heard")
    @Revision("1")
    record FittingHeard(BandId band, String fitting, Trunk trunk, List<Portion> putUp, Doer doer, Occurred occurred)
            implements BandEvent {
        public FittingHeard {
            putUp = List.copyOf(putUp);
        }
    }

    /** Somebody went to look. */
    @StoredAs("band.visited")
    @Revision("1")
    record Visited(
            BandId band,
            String visit,
            @Nullable Trunk trunk,
            Look look,
            boolean lowerBound,
            int policyVersion,
            Set<BandFlag> flags,
            Doer doer,
            Occurred occurred)
            implements BandEvent {
        public Visited {
            flags = Collections.unmodifiableSet(new TreeSet<>(flags));
        }
    }

    /** Pieces were renewed; {@code moves} are those that could be known. */
    @StoredAs("band.pieces-replaced")
    @Revision("1")
    record PiecesReplaced(
            BandId band,
            String visit,
            @Nullable Trunk trunk,
            Replacement replacement,
            List<Move> moves,
            Doer doer,
            Occurred occurred)
            implements BandEvent {
        public PiecesReplaced {
            moves = List.copyOf(moves);
        }
    }

    /** The band came down; {@code moves} are those that could be known. */
    @StoredAs("band.taken-down")
    @Revision("1")
    record TakenDown(
            BandId band,
            String teardown,
            @Nullable Trunk trunk,
            Teardown how,
            List<Move> moves,
            Set<BandFlag> flags,
            Doer doer,
            Occurred occurred)
            implements BandEvent {
        public TakenDown {
            moves = List.copyOf(moves);
            flags = Collections.unmodifiableSet(new TreeSet<>(flags));
        }
    }

    /**
     * A later-told fact made known where pieces went at an earlier-told one.
     *
     * @param fact the visit or teardown the moves belong to
     * @param kind whether that was a renewal or a teardown
     * @param doer who did that earlier-told fact
     * @param occurred when it was done, and when its moves became known
     */
    @StoredAs("band.places-settled")
    @Revision("1")
    record PlacesSettled(
            BandId band,
            String fact,
            PieceFact.Kind kind,
            @Nullable Trunk trunk,
            List<Move> moves,
            Doer doer,
            Occurred occurred)
            implements BandEvent {
        public PlacesSettled {
            moves = List.copyOf(moves);
        }
    }

    /** Somebody told what became of an animal. */
    @StoredAs("band.bycatch-closed")
    @Revision("1")
    record BycatchClosed(
            BandId band,
            String visit,
            String outcome,
            @Nullable String handedTo,
            @Nullable Instant handedAt,
            Doer doer,
            Occurred occurred)
            implements BandEvent {}
}
