package org.bandtrail.siteinstalls.trees;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;
import org.bandtrail.siteinstalls.sites.Point;
import org.bandtrail.siteinstalls.species.EppoCode;
import org.jspecify.annotations.Nullable;

/** What happened to trees. */
public sealed interface TreeEvent {
    /** The tree. */
    TreeId treeId();

    /**
     * A tree is in the register.
     *
     * @param treeId its identity
     * @param siteId where it stands
     * @param tag what is written on its tag
     * @param species as people use it, empty if not known
     * @param speciesCode of the EPPO list, null if not known
     * @param position where it stands, null if nobody took it
     * @param note what else was said, empty if nothing
     * @param by who registered it
     * @param when when
     */
    @StoredAs("tree.registered")
    @Revision("2")
    record TreeRegistered(
            TreeId treeId,
            SiteId siteId,
            String tag,
            String species,
            @Nullable EppoCode speciesCode,
            @Nullable Point position,
            String note,
            PersonId by,
            Occurred when)
            implements TreeEvent {
        /** What can be corrected later. */
        public TreeDetails details() {
            return new TreeDetails(siteId, tag, species, speciesCode, position, note);
        }
    }

    /**
     * A girth was measured.
     *
     * @param treeId the tree
     * @param girth in whole millimetres
     * @param written as it was written, for whoever doubts it later
     * @param height above ground, null if nobody told
     * @param whileFitting the band that was being fitted, null if the tree was measured by itself
     * @param by who measured
     * @param when when
     */
    @StoredAs("tree.girth-measured")
    @Revision("2")
    record GirthMeasured(
            TreeId treeId,
            Length girth,
            WrittenGirth written,
            @Nullable Length height,
            @Nullable BandId whileFitting,
            PersonId by,
            Occurred when)
            implements TreeEvent {}

    /**
     * What the register says was wrong and is corrected; both stay to be seen.
     *
     * @param treeId the tree
     * @param before what it said
     * @param after what it says now
     * @param reason why
     * @param by who corrected it
     * @param when when
     */
    @StoredAs("tree.corrected")
    @Revision("1")
    record TreeCorrected(
            TreeId treeId, TreeDetails before, TreeDetails after, String reason, PersonId by, Occurred when)
            implements TreeEvent {}

    /**
     * The tree is no more.
     *
     * @param treeId the tree
     * @param how how it went
     * @param reason what else was said, empty if nothing
     * @param by who saw it
     * @param when when
     */
    @StoredAs("tree.gone")
    @Revision("1")
    record TreeGone(TreeId treeId, GoneHow how, String reason, PersonId by, Occurred when) implements TreeEvent {}

    /**
     * A tree that was said to be gone stands after all.
     *
     * @param treeId the tree
     * @param reason what was seen
     * @param by who saw it
     * @param when when
     */
    @StoredAs("tree.found-again")
    @Revision("1")
    record FoundAgain(TreeId treeId, String reason, PersonId by, Occurred when) implements TreeEvent {}

    /**
     * The tree is the same trunk as another; its own events stay and are shown there.
     *
     * @param treeId the tree that was merged away
     * @param kept the tree that stays
     * @param reason why
     * @param by who said so
     * @param when when
     */
    @StoredAs("tree.merged")
    @Revision("1")
    record TreeMerged(TreeId treeId, TreeId kept, String reason, PersonId by, Occurred when) implements TreeEvent {}

    /**
     * A merge was taken back: the tree stands for itself again.
     *
     * @param treeId the tree that had been merged away
     * @param kept the tree into which it had been merged
     * @param reason why
     * @param by who said so
     * @param when when
     */
    @StoredAs("tree.unmerged")
    @Revision("1")
    record TreeUnmerged(TreeId treeId, TreeId kept, String reason, PersonId by, Occurred when) implements TreeEvent {}
}
