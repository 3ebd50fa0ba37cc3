package org.bandtrail.supplystock.custody;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Settles kits from the steps of their reels and batches, in the order of the books. Pure. */
final class Settling {
    private final Map<CustodyStep.Held, KitsOfHolding> holdings = new HashMap<>();
    private final Map<String, KitStory> stories = new TreeMap<>();

    private Settling(List<CustodyStep> steps) {
        Map<CustodyStep.Held, List<CustodyStep>> byHolding =
                steps.stream().collect(Collectors.groupingBy(CustodyStep::held));
        byHolding.forEach((held, own) -> holdings.put(held, new KitsOfHolding(held, own)));
    }

    /**
     * Settles.
     *
     * @param steps every step of every reel or batch concerned, in the order of the books
     */
    static Settling of(List<CustodyStep> steps) {
        Settling settling = new Settling(steps);
        for (int i = 0; i < steps.size(); i++) {
            CustodyStep step = steps.get(i);
            boolean endOfEvent = i + 1 == steps.size()
                    || steps.get(i + 1).position() != step.position()
                    || !steps.get(i + 1).held().equals(step.held());
            settling.take(step, endOfEvent);
        }
        return settling;
    }

    private void take(CustodyStep step, boolean endOfEvent) {
        KitsOfHolding holding = holdings.get(step.held());
        if (holding == null) {
            return;
        }
        List<KitsOfHolding.Changed> changed = new ArrayList<>(holding.take(step));
        if (endOfEvent && step.measured()) {
            changed.addAll(holding.measured(step));
        }
        changed.forEach(each -> stories.computeIfAbsent(each.kit(), unused -> new KitStory())
                .add(each.step(), each.after().stillOut()));
        if (endOfEvent) {
            stories.values().forEach(KitStory::endOfEvent);
        }
    }

    /** The settlement of every reel and batch of a kit. */
    Map<CustodyStep.Held, Settlement> lines(String kit) {
        Map<CustodyStep.Held, Settlement> lines = new LinkedHashMap<>();
        holdings.forEach((held, holding) -> {
            Settlement settlement = holding.kits().get(kit);
            if (settlement != null) {
                lines.put(held, settlement);
            }
        });
        return lines;
    }

    /** How a kit came to be settled, and reopened. */
    List<Chapter> story(String kit) {
        KitStory story = stories.get(kit);
        return story == null ? List.of() : story.chapters();
    }

    /**
     * One turn in the story of a kit.
     *
     * @param settled true: nothing was out after it; false: a fact came although it was settled
     * @param what the trade's word for the fact, for example fitted
     * @param id the reel or batch
     * @param quantity millimetres or pieces
     */
    record Chapter(
            boolean settled, String what, String id, long quantity, String place, Instant happened, Instant recorded) {}
}
