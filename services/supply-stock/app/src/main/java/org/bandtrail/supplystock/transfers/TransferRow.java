package org.bandtrail.supplystock.transfers;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One transfer as people see it.
 *
 * @param source place it left, in text form
 * @param target place it goes to
 * @param state {@code on-its-way}, {@code arrived} or {@code called-off}
 * @param endedBy who confirmed the arrival or called it off, null while on its way
 * @param oneHand whether the person who sent it also confirmed its arrival
 */
public record TransferRow(
        String transferId,
        String source,
        String target,
        String carrier,
        String state,
        Instant sentAt,
        String sentBy,
        @Nullable Instant endedAt,
        @Nullable String endedBy,
        @Nullable String reason,
        boolean oneHand,
        List<Line> lines) {

    /**
     * @param holding {@code reel} or {@code batch}
     * @param sent millimetres or pieces that left
     * @param arrived millimetres or pieces that came, null until confirmed
     */
    public record Line(
            String holding,
            String id,
            @Nullable String materialCode,
            long sent,
            @Nullable Long arrived) {}
}
