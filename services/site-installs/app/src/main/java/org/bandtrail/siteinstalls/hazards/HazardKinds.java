package org.bandtrail.siteinstalls.hazards;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The kinds of hazards this house knows, in the order in which they are offered. */
public final class HazardKinds {
    private final Map<String, HazardKind> kinds = new LinkedHashMap<>();

    HazardKinds(List<HazardKind> known) {
        known.forEach(kind -> kinds.put(kind.kind(), kind));
    }

    /** All kinds. */
    public List<HazardKind> all() {
        return List.copyOf(kinds.values());
    }

    /**
     * Lets only known kinds through.
     *
     * @throws IllegalArgumentException naming the unknown kind and those there are
     */
    public void mustKnow(Collection<Hazard> hazards) {
        for (Hazard hazard : hazards) {
            if (!kinds.containsKey(hazard.kind())) {
                throw new IllegalArgumentException("Hazard [%s] is not known. Use one of %s, and say more in the note."
                        .formatted(hazard.kind(), String.join(", ", kinds.keySet())));
            }
        }
    }

    /** The kind, or one made of its key for a hazard stored under a kind that was taken out since. */
    public HazardKind of(String kind) {
        HazardKind known = kinds.get(kind);
        return known == null ? new HazardKind(kind, kind, "Ask the lead before going there.", "no longer kept") : known;
    }
}
