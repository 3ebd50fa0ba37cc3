package org.bandtrail.supplystock.periods;

import org.bandtrail.kernel.PersonId;
import org.jspecify.annotations.Nullable;

/**
 * A check as it stood when the month was closed.
 *
 * @param found what it found
 * @param signedBy who answers for it, null if it was clean
 * @param reason why it may stand, null if it was clean
 */
public record CheckPassed(
        CheckFound found,
        @Nullable PersonId signedBy,
        @Nullable String reason) {
    /** Nothing was open. */
    static CheckPassed clean(CheckFound found) {
        return new CheckPassed(found, null, null);
    }

    /** Something was open and somebody answers for it. */
    static CheckPassed signed(CheckFound found, PeriodEvent.CheckSigned signature) {
        return new CheckPassed(found, signature.by(), signature.reason());
    }
}
