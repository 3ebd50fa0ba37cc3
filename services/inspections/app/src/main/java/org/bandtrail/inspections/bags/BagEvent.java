package org.bandtrail.inspections.bags;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.inspections.pieces.Doer;
import org.bandtrail.inspections.pieces.Move;
import org.bandtrail.kernel.BagId;
import org.bandtrail.kernel.LoadId;
import org.bandtrail.kernel.Occurred;

/** What happened to a bag. */
public sealed interface BagEvent {
    /** The bag. */
    BagId bag();

    /** Who did it and who told it. */
    Doer doer();

    /** When it was done and when this service learnt of it. */
    Occurred occurred();

    /** What changed place by it. */
    List<Move> moves();

    /** Pieces went in (the bag is the target) or had not gone in after all (the bag is the source). */
    @StoredAs("bag.contents-noted")
    @Revision("1")
    record ContentsNoted(BagId bag, List<Move> moves, Doer doer, Occurred occurred) implements BagEvent {
        public ContentsNoted {
            moves = List.copyOf(moves);
        }
    }

    /** The bag left with a load; {@code moves} empty it as far as its contents are known. */
    @StoredAs("bag.taken-away")
    @Revision("1")
    record TakenAway(
            BagId bag, LoadId load, String carrier, List<Move> moves, Set<BagFlag> flags, Doer doer, Occurred occurred)
            implements BagEvent {
        public TakenAway {
            moves = List.copyOf(moves);
            flags = Collections.unmodifiableSet(new TreeSet<>(flags));
        }
    }

    /** Contents told after the bag had left follow it to its load, or are taken back out of that. */
    @StoredAs("bag.contents-followed")
    @Revision("1")
    record ContentsFollowed(BagId bag, LoadId load, String carrier, List<Move> moves, Doer doer, Occurred occurred)
            implements BagEvent {
        public ContentsFollowed {
            moves = List.copyOf(moves);
        }
    }
}
