package org.bandtrail.supplystock.grants;

import java.time.Instant;
import java.time.LocalDate;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One grant as people see it.
 *
 * @param amount all that may be spent of it
 * @param from first day it is good for
 * @param until last day it is good for
 */
public record GrantRow(String grantId, String name, Money amount, LocalDate from, LocalDate until) {

    /** Terms as they were from a moment on; the reason is null for the registration. */
    public record Agreed(
            String name,
            Money amount,
            LocalDate from,
            LocalDate until,
            @Nullable String reason,
            String by,
            Instant at) {}
}
