package org.bandtrail.supplystock.tolerances;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of the policy.
 *
 * @param now what holds, null until somebody sets it
 */
public record Tolerance(@Nullable Tolerances now) {
    /** The one policy of a programme. */
    public static final String MATCH = "MATCH";
    /** Nobody has set a policy yet. */
    public static final Tolerance UNKNOWN = new Tolerance(null);

    /**
     * What a command makes happen.
     *
     * @throws ToleranceRefused if nobody says why
     */
    public List<ToleranceEvent> decide(ToleranceCommand command) {
        return switch (command) {
            case ToleranceCommand.Set set -> {
                if (set.reason().isBlank() || set.source().isBlank()) {
                    throw new ToleranceRefused.ToleranceWithoutReason();
                }
                yield set.tolerances().equals(now)
                        ? List.of()
                        : List.of(new ToleranceEvent.ToleranceSet(
                                set.policy(),
                                set.tolerances(),
                                set.source().strip(),
                                set.reason().strip(),
                                set.by(),
                                set.occurred()));
            }
        };
    }

    /** The policy after an event. */
    public Tolerance evolve(ToleranceEvent event) {
        return switch (event) {
            case ToleranceEvent.ToleranceSet set -> new Tolerance(set.tolerances());
        };
    }
}
