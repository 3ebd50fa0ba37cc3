package org.bandtrail.frontdesk.kits;

import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/**
 * Which kit was packed for a cut plan. Supply stock knows nothing of cut plans, so the kit's name tells: K- and the name
 * of the plan, with -2, -3 and so on behind it when an earlier one was given free again.
 */
@Component
public class PackedFor {
    private static final String MARK = "K-";
    private static final String CUT_PLAN = MARK + "CP-";
    private static final int LONGEST_NAME = 38;
    private static final int MOST_TRIES = 9;
    private final Kits kits;

    PackedFor(Kits kits) {
        this.kits = kits;
    }

    /** The kit that is reserved, out or settled for the plan, empty if there is none. */
    public Optional<Kit.Life> kit(String planId) {
        for (int number = 1; number <= MOST_TRIES; number++) {
            Optional<Kit.Life> found = known(name(planId, number));
            if (found.isEmpty() || holds(found.get())) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** A name for the next kit of the plan. */
    String nextName(String planId) {
        int number = 1;
        while (number < MOST_TRIES && known(name(planId, number)).isPresent()) {
            number++;
        }
        return name(planId, number);
    }

    /** The plan a kit of this name was packed for, empty if the name does not say so. */
    static Optional<String> plan(String kitId) {
        return kitId.startsWith(CUT_PLAN)
                ? Optional.of(kitId.substring(MARK.length()).replaceFirst("-[2-9]$", ""))
                : Optional.empty();
    }

    private static boolean holds(Kit.Life kit) {
        return !kit.state().equals("released") && !kit.state().equals("lapsed");
    }

    private static String name(String planId, int number) {
        String base = MARK + planId;
        String cut = base.substring(0, Math.min(LONGEST_NAME, base.length()));
        return number == 1 ? cut : cut + "-" + number;
    }

    private Optional<Kit.Life> known(String kitId) {
        try {
            return Optional.of(kits.kit(kitId).kit());
        } catch (NeighbourRefused refused) {
            if (refused.status() == HttpStatus.NOT_FOUND.value()) {
                return Optional.empty();
            }
            throw refused;
        }
    }
}
