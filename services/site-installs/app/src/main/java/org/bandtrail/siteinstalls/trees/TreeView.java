package org.bandtrail.siteinstalls.trees;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One tree as people see it.
 *
 * @param treeId its identity
 * @param siteId where it stands
 * @param tag what is on its tag
 * @param species as people use it, empty if not known
 * @param girthMm measured last, in millimetres, null if never
 * @param girthMeasuredAt when that was
 * @param bandsUp bands that hang on it now
 */
public record TreeView(
        String treeId,
        String siteId,
        String tag,
        String species,
        @Nullable Long girthMm,
        @Nullable Instant girthMeasuredAt,
        long bandsUp) {

    /**
     * One thing that happened to a tree.
     *
     * @param what in words
     * @param happenedAt when
     * @param recordedAt when the books learnt of it
     * @param by who
     * @param girthMm what was measured, null if nothing
     * @param note as written
     */
    public record Step(
            String what,
            Instant happenedAt,
            Instant recordedAt,
            String by,
            @Nullable Long girthMm,
            String note) {}

    /**
     * A band that hangs or hung on it.
     *
     * @param bandId the band
     * @param treeId the tree
     * @param siteId the site
     * @param state up or down
     * @param fittedAt when it was fitted, null if not known yet
     */
    public record BandOnTree(
            String bandId,
            String treeId,
            @Nullable String siteId,
            String state,
            @Nullable Instant fittedAt) {}

    /** A tree with its history and its bands, as one flat object. */
    public record Whole(
            String treeId,
            String siteId,
            String tag,
            String species,
            @Nullable Long girthMm,
            @Nullable Instant girthMeasuredAt,
            long bandsUp,
            List<Step> history,
            List<BandOnTree> bands) {
        static Whole of(TreeView tree, List<Step> history, List<BandOnTree> bands) {
            return new Whole(
                    tree.treeId(),
                    tree.siteId(),
                    tree.tag(),
                    tree.species(),
                    tree.girthMm(),
                    tree.girthMeasuredAt(),
                    tree.bandsUp(),
                    history,
                    bands);
        }
    }
}
