package org.bandtrail.inspections.bands;

/**
 * What of the visit policy in force a decision needs. It travels with the command so that the decision can be repeated
 * years later, when the policy has long changed.
 *
 * @param policyVersion version of the policy
 * @param fullFromPercent saturation from which a band is too full to catch on, 1 to 100
 * @param lateAfterHours how many hours after the fact a record counts as late, above 0
 */
public record Judging(int policyVersion, int fullFromPercent, int lateAfterHours) {
    public Judging {
        if (fullFromPercent < 1 || fullFromPercent > 100) {
            throw new IllegalArgumentException(
                    "A band cannot be full from [%d] percent. Choose 1 to 100.".formatted(fullFromPercent));
        }
        if (lateAfterHours < 1) {
            throw new IllegalArgumentException(
                    "A record cannot be late after [%d] hours. Choose 1 or more.".formatted(lateAfterHours));
        }
    }
}
