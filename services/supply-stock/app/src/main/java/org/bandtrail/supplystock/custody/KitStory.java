package org.bandtrail.supplystock.custody;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How one kit was settled and reopened, event by event. */
final class KitStory {
    private final Map<CustodyStep.Held, Long> out = new HashMap<>();
    private final List<Settling.Chapter> chapters = new ArrayList<>();
    private boolean settled;

    @Nullable
    private CustodyStep last;

    void add(CustodyStep step, long stillOut) {
        if (settled) {
            chapters.add(chapter(false, step));
            settled = false;
        }
        if (stillOut == 0) {
            out.remove(step.held());
        } else {
            out.put(step.held(), stillOut);
        }
        last = step;
    }

    void endOfEvent() {
        CustodyStep step = last;
        if (step != null && out.isEmpty() && !settled) {
            settled = true;
            chapters.add(chapter(true, step));
        }
        last = null;
    }

    List<Settling.Chapter> chapters() {
        return List.copyOf(chapters);
    }

    private static Settling.Chapter chapter(boolean settled, CustodyStep step) {
        return new Settling.Chapter(
                settled,
                step.what(),
                step.held().id(),
                step.quantity(),
                step.place(),
                step.happened(),
                step.recorded());
    }
}
