package org.bandtrail.supplystock.custody;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * To which kit each step of one reel or batch with one person belongs. A reel goes out whole, so a step belongs to the
 * kit that was out when it happened: the last one handed out before, or the first one if none was. Fasteners of several
 * kits lie in one pocket, so what is used or brought back counts for the oldest kit of which something is out.
 */
final class KitsOfHolding {
    private final boolean reel;
    private final List<CustodyStep> handouts;
    private final Map<String, Settlement> kits = new TreeMap<>();

    /** The settlement of one kit changed by a step. */
    record Changed(String kit, CustodyStep step, Settlement after) {}

    /** @param steps all steps of one reel or batch with one person */
    KitsOfHolding(CustodyStep.Held held, List<CustodyStep> steps) {
        this.reel = held.reel();
        this.handouts = steps.stream()
                .filter(step -> step.kitId() != null)
                .sorted(Comparator.comparing(CustodyStep::happened).thenComparing(CustodyStep::position))
                .toList();
    }

    /** What each kit's settlement is after the steps so far. */
    Map<String, Settlement> kits() {
        return kits;
    }

    /** Takes one step; steps come in the order of the books. Returns what changed, nothing if no kit was ever out. */
    List<Changed> take(CustodyStep step) {
        List<Changed> changed = new ArrayList<>();
        long rest = step.quantity();
        if (step.kitId() == null && !reel) {
            for (String kit : oldestFirst()) {
                long part = Math.min(rest, has(kit, step.source()));
                if (part > 0) {
                    changed.add(change(kit, step.of(part)));
                    rest -= part;
                }
            }
        }
        String last = step.kitId() == null ? outThen(step) : step.kitId();
        if (rest > 0 && last != null) {
            changed.add(change(last, step.of(rest)));
        }
        return changed;
    }

    /** After the last step of a measured return. */
    List<Changed> measured(CustodyStep last) {
        List<Changed> changed = new ArrayList<>();
        String only = outThen(last);
        for (String kit : List.copyOf(kits.keySet())) {
            Settlement before = kits.getOrDefault(kit, Settlement.NOTHING);
            if ((!reel || kit.equals(only)) && before.stillOut() != 0) {
                kits.put(kit, before.measured());
                changed.add(new Changed(kit, last, before.measured()));
            }
        }
        return changed;
    }

    private Changed change(String kit, CustodyStep step) {
        Settlement after = kits.getOrDefault(kit, Settlement.NOTHING)
                .after(step.source(), step.target(), step.quantity())
                .explained();
        kits.put(kit, after);
        return new Changed(kit, step, after);
    }

    private long has(String kit, Station source) {
        Settlement now = kits.getOrDefault(kit, Settlement.NOTHING);
        return switch (source) {
            case WITH_PERSON -> now.stillOut();
            case MISSING -> now.missing();
            default -> 0;
        };
    }

    private List<String> oldestFirst() {
        return handouts.stream()
                .map(CustodyStep::kitId)
                .filter(kit -> kit != null && kits.containsKey(kit))
                .distinct()
                .toList();
    }

    private @Nullable String outThen(CustodyStep step) {
        CustodyStep then = null;
        for (CustodyStep handout : handouts) {
            if (then == null || !handout.happened().isAfter(step.happened())) {
                then = handout;
            }
        }
        return then == null ? null : then.kitId();
    }
}
