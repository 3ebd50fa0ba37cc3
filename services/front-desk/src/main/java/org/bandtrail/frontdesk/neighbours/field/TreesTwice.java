package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** What site-installs knows of trees that stand in the register twice. */
public final class TreesTwice {
    private static final ParameterizedTypeReference<Rows<Pair>> PAIRS = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Decision>> DECISIONS = new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public TreesTwice(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** One of two trees. */
    public record One(
            String treeId,
            String siteId,
            String tag,
            String species,
            @Nullable String speciesCode,
            @Nullable Double lat,
            @Nullable Double lon,
            @Nullable Long girthMm,
            long bandsUp) {}

    /** Two trees that look like one; lengths in millimetres, null where one has no place or no girth. */
    public record Pair(
            One first,
            One second,
            boolean sameTag,
            @Nullable Long distanceMm,
            boolean near,
            @Nullable Long girthDifferenceMm) {}

    /** How close and how alike two trees must be, and where those figures are from. */
    public record Rules(long nearMm, int girthPermille, String source, String reason) {}

    /** Pairs with the rules they were found by; next is null on the last page. */
    public record Found(List<Pair> rows, @Nullable String next, Rules rules) {}

    /** What holds of a pair: kept is the tree that stays, null if they are two. */
    public record Decision(
            long number,
            String first,
            String second,
            @Nullable String kept,
            String reason,
            String by,
            Instant decidedAt) {
        /** The tree that was merged away, null if they are two. */
        public @Nullable String merged() {
            if (kept == null) {
                return null;
            }
            return kept.equals(first) ? second : first;
        }
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** One page of pairs nobody decided of. */
    public Found found(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/tree-duplicates", asked, Found.class);
    }

    /** All such pairs, page after page. */
    public List<Pair> allFound(Map<String, String> asked) {
        return neighbour.everything(after -> neighbour.get("/tree-duplicates", Rows.withAfter(asked, after), PAIRS));
    }

    /** What was decided and holds, the latest first. */
    public Rows<Decision> decisions(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/tree-duplicates/decisions", asked, DECISIONS);
    }

    /** All that was decided and holds. */
    public List<Decision> allDecisions() {
        return neighbour.everything(after -> decisions(Rows.withAfter(Map.of(), after)));
    }
}
