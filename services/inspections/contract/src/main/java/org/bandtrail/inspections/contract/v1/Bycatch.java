package org.bandtrail.inspections.contract.v1;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * An animal other than the pest found on a band, or the express answer that there was none.
 *
 * @param seen false is an answer: somebody looked and there was no animal
 * @param foundAt when it was found, null if none was seen or nobody wrote it down
 * @param animal what it was, in the words of the finder
 * @param alive whether it lived when found, null if not written down
 * @param action what was done
 * @param handedTo code or licence number of the rehabilitator who took it, never a name
 * @param handedAt when it was handed over
 * @param outcome what became of it, null while open
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
        boolean supervisorTold) {}
