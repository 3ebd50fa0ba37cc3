package org.bandtrail.inspections.sightings;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An animal other than the pest on the band, or the express answer that there was none. State of band and guard are in
 * the visit itself.
 *
 * @param seen whether there was one
 * @param foundAt when it was found
 * @param animal what it was, in the finder's words
 * @param alive whether it lived when found
 * @param action what was done
 * @param handedTo code or licence number of the rehabilitator who took it, never a name
 * @param handedAt when it was handed over
 * @param outcome what became of it
 * @param photo reference of a photograph
 * @param supervisorTold whether the supervisor was told
 */
public record Bycatch(
        boolean seen,
        @Nullable Instant foundAt,
        @Nullable String animal,
        @Nullable Boolean alive,
        @Nullable String action,
        @Nullable String handedTo,
        @Nullable Instant handedAt,
        @Nullable String outcome,
        @Nullable String photo,
        boolean supervisorTold) {
    /** Somebody looked and there was no other animal. */
    public static final Bycatch NONE = new Bycatch(false, null, null, null, null, null, null, null, null, false);

    /** Tells whether somebody still has to do something: an animal was seen and nobody wrote what became of it. */
    public boolean open() {
        boolean deadAndDealtWith = Boolean.FALSE.equals(alive) && action != null;
        return seen && outcome == null && !deadAndDealtWith;
    }
}
