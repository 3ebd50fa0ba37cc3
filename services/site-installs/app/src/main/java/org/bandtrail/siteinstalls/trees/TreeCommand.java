package org.bandtrail.siteinstalls.trees;

import org.axonframework.modelling.command.TargetAggregateIdentifier;
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

/** What people ask of trees. */
public sealed interface TreeCommand {
    /** The tree. */
    TreeId treeId();

    /**
     * Adds a tree to the register.
     *
     * @param treeId a free identity, see {@link Tree#named}
     * @param siteId where it stands
     * @param tag what is written on its tag, 1 to 40 characters
     * @param species name or code as people use it, empty if not known
     * @param speciesCode of the EPPO list, null if not known
     * @param position where it stands, null if nobody took it
     * @param girth the first measurement, null if there is none
     * @param girthHeight above ground at which that was, null if nobody told
     * @param note what else is to be said, empty if nothing
     * @param by who registers it
     * @param when when it was seen (and measured)
     */
    record RegisterTree(
            @TargetAggregateIdentifier TreeId treeId,
            SiteId siteId,
            String tag,
            String species,
            @Nullable EppoCode speciesCode,
            @Nullable Point position,
            @Nullable WrittenGirth girth,
            @Nullable Length girthHeight,
            String note,
            PersonId by,
            Occurred when)
            implements TreeCommand {}

    /**
     * Adds a measurement.
     *
     * @param treeId a registered tree
     * @param girth as written
     * @param height above ground, null if nobody told
     * @param whileFitting the band that was being fitted, null if the tree was measured by itself
     * @param by who measured
     * @param when when
     */
    record MeasureGirth(
            @TargetAggregateIdentifier TreeId treeId,
            WrittenGirth girth,
            @Nullable Length height,
            @Nullable BandId whileFitting,
            PersonId by,
            Occurred when)
            implements TreeCommand {}

    /**
     * Corrects what the register says.
     *
     * @param treeId a registered tree
     * @param details all of it as it ought to be
     * @param reason why, not empty
     * @param by who corrects
     * @param when when
     */
    record CorrectTree(
            @TargetAggregateIdentifier TreeId treeId, TreeDetails details, String reason, PersonId by, Occurred when)
            implements TreeCommand {}

    /**
     * Notes that a tree is no more: a fact from the field.
     *
     * @param treeId a registered tree
     * @param how how it went
     * @param reason what else was seen, may be empty
     * @param by who saw it
     * @param when when
     */
    record NoteGone(@TargetAggregateIdentifier TreeId treeId, GoneHow how, String reason, PersonId by, Occurred when)
            implements TreeCommand {}

    /**
     * Notes that a tree stands after all.
     *
     * @param treeId a tree that was said to be gone
     * @param reason what was seen, may be empty
     * @param by who saw it
     * @param when when
     */
    record NoteFoundAgain(@TargetAggregateIdentifier TreeId treeId, String reason, PersonId by, Occurred when)
            implements TreeCommand {}

    /**
     * Says that a tree is the same trunk as another one, which stays.
     *
     * @param treeId a registered tree, which then stands in the books only through the other
     * @param kept the other, registered and not merged itself: whoever sends this has looked
     * @param reason why, not empty
     * @param by who says so
     * @param when when
     */
    record MergeTree(@TargetAggregateIdentifier TreeId treeId, TreeId kept, String reason, PersonId by, Occurred when)
            implements TreeCommand {}

    /**
     * Takes a merge back.
     *
     * @param treeId a tree that was merged into another
     * @param reason why, not empty
     * @param by who says so
     * @param when when
     */
    record UnmergeTree(@TargetAggregateIdentifier TreeId treeId, String reason, PersonId by, Occurred when)
            implements TreeCommand {}
}
