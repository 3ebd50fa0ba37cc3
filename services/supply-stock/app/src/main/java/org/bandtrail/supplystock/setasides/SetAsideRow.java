package org.bandtrail.supplystock.setasides;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A reel or batch that stands aside.
 *
 * @param key by which the list is ordered
 * @param holding {@code reel} or {@code batch}
 * @param quantity millimetres or pieces
 * @param why reason or delivery, null if nobody said
 * @param by who set it aside
 * @param since when that happened
 */
public record SetAsideRow(
        String key,
        String holding,
        String id,
        @Nullable String materialCode,
        String depotId,
        long quantity,
        @Nullable String why,
        String by,
        Instant since) {}
