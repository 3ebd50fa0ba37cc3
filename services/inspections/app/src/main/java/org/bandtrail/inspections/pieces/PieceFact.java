package org.bandtrail.inspections.pieces;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * One thing that was done to the pieces of a band.
 *
 * @param id the fitting, visit or teardown
 * @param kind what was done
 * @param happened when, as the person or device says
 * @param person from whose custody new pieces came
 * @param trunk where, known only for a fitting
 * @param putUp new pieces
 * @param takenOff kinds of which everything that hung was taken off, with the place it went to
 */
public record PieceFact(
        String id,
        Kind kind,
        Instant happened,
        PersonId person,
        @Nullable Trunk trunk,
        List<Portion> putUp,
        Map<MaterialKind, String> takenOff) {
    /** Facts in the order in which they happened; of two at the same moment a fitting comes before a teardown. */
    static final Comparator<PieceFact> BY_TIME = Comparator.comparing(PieceFact::happened)
            .thenComparing(PieceFact::kind)
            .thenComparing(PieceFact::id);

    /** What can be done to the pieces of a band, in the order of a band's life. */
    public enum Kind {
        /** The band was put up; told by site-installs, which also publishes these pieces' first move. */
        FITTED,
        /** Pieces were renewed on a visit. */
        RENEWED,
        /** Everything came down. */
        TAKEN_DOWN
    }

    public PieceFact {
        putUp = List.copyOf(putUp);
        takenOff = Collections.unmodifiableMap(new TreeMap<>(takenOff));
    }
}
