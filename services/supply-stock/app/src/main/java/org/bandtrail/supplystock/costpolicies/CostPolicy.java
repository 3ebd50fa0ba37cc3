package org.bandtrail.supplystock.costpolicies;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The rules of the policy.
 *
 * @param methods by the year in which each begins
 */
public record CostPolicy(Map<Integer, CostMethod> methods) {
    /** Nobody has decided yet. */
    public static final CostPolicy UNKNOWN = new CostPolicy(Map.of());

    private static final int EARLIEST = 2000;
    private static final int LATEST = 2099;

    /** Keeps its own copy. */
    public CostPolicy {
        methods = Map.copyOf(methods);
    }

    /** What holds in a year. */
    public CostMethod of(int year) {
        Map.Entry<Integer, CostMethod> last = new TreeMap<>(methods).floorEntry(year);
        return last == null ? CostMethod.DEFAULT : last.getValue();
    }

    /**
     * What a command makes happen; nothing if the year is set so already.
     *
     * @throws CostPolicyRefused if the year has begun, is none, or nobody says why
     */
    public List<CostPolicyEvent> decide(CostPolicyCommand command) {
        return switch (command) {
            case CostPolicyCommand.Set set -> {
                if (set.year() < EARLIEST || set.year() > LATEST) {
                    throw new CostPolicyRefused.YearUnfit(set.year(), EARLIEST, LATEST);
                }
                if (set.reason().isBlank()) {
                    throw new CostPolicyRefused.CostPolicyWithoutReason(set.year());
                }
                if (set.method() == methods.get(set.year())) {
                    yield List.of();
                }
                if (set.begun()) {
                    throw new CostPolicyRefused.YearHasBegun(set.year(), of(set.year()));
                }
                yield List.of(new CostPolicyEvent.Set(
                        set.policy(), set.year(), set.method(), set.reason().strip(), set.by(), set.occurred()));
            }
        };
    }

    /** The policy after an event. */
    public CostPolicy evolve(CostPolicyEvent event) {
        return switch (event) {
            case CostPolicyEvent.Set set -> {
                Map<Integer, CostMethod> next = new TreeMap<>(methods);
                next.put(set.year(), set.method());
                yield new CostPolicy(next);
            }
        };
    }
}
