package org.bandtrail.supplystock.countrules;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who may change the rules to what.
 *
 * @param now what holds, null until somebody sets it
 */
public record CountRule(@Nullable CountRules now) {
    /** The rules of the one programme. */
    public static final String PROGRAMME = "PROGRAMME";

    /** Nobody has set rules yet. */
    public static final CountRule UNKNOWN = new CountRule(null);

    /**
     * What a command makes happen; the same rules again change nothing.
     *
     * @throws CountRuleRefused if the wish cannot be granted
     */
    public List<CountRuleEvent> decide(CountRuleCommand command) {
        return switch (command) {
            case CountRuleCommand.Set set -> {
                if (set.reason().isBlank() || set.source().isBlank()) {
                    throw new CountRuleRefused.RulesWithoutReason();
                }
                if (!set.rules().sound()) {
                    throw new CountRuleRefused.RulesNotSound(set.rules());
                }
                yield set.rules().equals(now)
                        ? List.of()
                        : List.of(new CountRuleEvent.RulesSet(
                                set.programme(),
                                set.rules(),
                                set.source().strip(),
                                set.reason().strip(),
                                set.by(),
                                set.occurred()));
            }
        };
    }

    /** The rules after an event. */
    public CountRule evolve(CountRuleEvent event) {
        return switch (event) {
            case CountRuleEvent.RulesSet set -> new CountRule(set.rules());
        };
    }
}
