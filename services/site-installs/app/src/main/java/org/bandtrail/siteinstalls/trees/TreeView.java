package org.bandtrail.siteinstalls.trees;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.math.BigDecimal;
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
 * @param speciesCode of the EPPO list, null if not known
 * @param lat latitude in degrees, WGS 84, null if nobody took it
 * @param lon longitude in degrees, null if nobody took it
 * @param girthMm measured last, in millimetres, null if never
 * @param girthHeightMm above ground where that was, null if nobody told
 * @param girthMeasuredAt when that was
 * @param note of whoever registered it, empty if none
 * @param goneAt when it was felled, fell, died or was not found, null while it stands
 * @param goneHow in words, null while it stands
 * @param bandsUp bands that hang on it now, those of trees merged into it among them
 * @param mergedInto the tree that stands for this trunk too, null while it stands for itself
 * @param mergedAt when the books learnt that, null while it stands for itself
 */
public record TreeView(
        String treeId,
        String siteId,
        String tag,
        String species,
        @Nullable String speciesCode,
        @Nullable BigDecimal lat,
        @Nullable BigDecimal lon,
        @Nullable Long girthMm,
        @Nullable Long girthHeightMm,
        @Nullable Instant girthMeasuredAt,
        String note,
        @Nullable Instant goneAt,
        @Nullable String goneHow,
        long bandsUp,
        @Nullable String mergedInto,
        @Nullable Instant mergedAt) {

    /**
     * One thing that happened to a tree.
     *
     * @param treeId for which it was written: the tree itself or one that was merged into it
     * @param afterMerge whether it was written for a merged tree after the merge
     * @param what in words
     * @param happenedAt when
     * @param recordedAt when the books learnt of it
     * @param by who
     * @param girthMm what was measured, null if nothing
     * @param girthHeightMm above ground where that was, null if nobody told
     * @param bandId the band that was being fitted, null if none
     * @param note as written
     */
    public record Step(
            String treeId,
            boolean afterMerge,
            String what,
            Instant happenedAt,
            Instant recordedAt,
            String by,
            @Nullable Long girthMm,
            @Nullable Long girthHeightMm,
            @Nullable String bandId,
            String note) {}

    /**
     * A band that hangs or hung on it.
     *
     * @param bandId the band
     * @param treeId the tree for which it was fitted, this one or one merged into it
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

    /**
     * A tree that turned out to be this one.
     *
     * @param treeId its identity
     * @param tag what is on its tag
     * @param mergedAt when the books learnt it
     */
    public record Merged(String treeId, String tag, Instant mergedAt) {}

    /**
     * A tree with its history and its bands, as one flat object.
     *
     * @param tree as in lists
     * @param history newest first
     * @param bands those fitted last first
     * @param merged the trees that turned out to be this one
     */
    public record Whole(
            @JsonUnwrapped TreeView tree, List<Step> history, List<BandOnTree> bands, List<Merged> merged) {}
}
