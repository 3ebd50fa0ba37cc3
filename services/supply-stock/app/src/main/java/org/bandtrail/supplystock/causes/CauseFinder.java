package org.bandtrail.supplystock.causes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Names likely causes of a balance that does not add up, the likeliest first, one of each kind. Evidence that fits to
 * the millimetre on two sides weighs most, a single figure that would fit less, and a silence least. The weights are
 * an order between kinds of evidence (common practice, no source), not probabilities.
 */
public final class CauseFinder {
    private final CausePolicy policy;

    /** Looks with this policy. */
    public CauseFinder(CausePolicy policy) {
        this.policy = policy;
    }

    /**
     * The likely causes.
     *
     * @param open the balance and what the books were told
     * @return the likeliest first; empty if books and field agree or nothing speaks for a known slip
     */
    public List<Cause> likely(Case open) {
        if (open.gap() == 0) {
            return List.of();
        }
        Words words = new Words(open.pieces());
        List<Cause> all = new ArrayList<>(new OtherReels(open, policy, words).causes());
        all.addAll(DoubledFacts.of(open, policy, words));
        if (!words.pieces()) {
            all.addAll(UnitMistakes.of(open, policy, words));
        }
        all.addAll(new LateEntries(open, policy, words).causes());
        Map<CauseKind, Cause> best = new EnumMap<>(CauseKind.class);
        all.forEach(cause ->
                best.merge(cause.kind(), cause, (known, next) -> next.weight() > known.weight() ? next : known));
        return best.values().stream()
                .sorted(Comparator.comparingInt(Cause::weight).reversed())
                .toList();
    }
}
