package org.bandtrail.inspections.contract.v1;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A band came off its tree. Tape always goes to the bag; mesh and fasteners go to the bag or back to the person for
 * further use. As with {@link PiecesReplaced}, moves that were not known at first follow in a further message of the
 * same teardown with {@code settlesEarlier} true.
 *
 * @param teardownId names the teardown for ever
 * @param bandId the band
 * @param treeId the tree, null while inspections has not heard where the band hangs (then there are no moves yet)
 * @param siteId the site, null likewise
 * @param crewId the crew, null if not written down
 * @param personId who took it down
 * @param bagId the waste bag, null if nothing went into one
 * @param settlesEarlier true if this message only carries moves an earlier one could not know
 * @param moves every quantity that changed place
 * @param happenedAt when it was done
 * @param recordedAt when inspections learnt of it
 * @param by who told it
 */
public record BandTakenDown(
        String teardownId,
        String bandId,
        @Nullable String treeId,
        @Nullable String siteId,
        @Nullable String crewId,
        String personId,
        @Nullable String bagId,
        boolean settlesEarlier,
        List<MaterialMove> moves,
        Instant happenedAt,
        Instant recordedAt,
        String by) {
    /** The name in the envelope. */
    public static final String TYPE = "inspections.band-taken-down.v1";

    public BandTakenDown {
        moves = List.copyOf(moves);
    }

    /** What the event is about: the band. Order is kept per subject. */
    public String subject() {
        return "band/" + bandId;
    }
}
