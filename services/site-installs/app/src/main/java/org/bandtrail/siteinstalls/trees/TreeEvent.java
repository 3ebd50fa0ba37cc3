package org.bandtrail.siteinstalls.trees;

import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.girths.WrittenGirth;

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
     * @param by who registered it
     * @param when when
     */
    @StoredAs("tree.registered")
    @Revision("1")
    record TreeRegistered(TreeId treeId, SiteId siteId, String tag, String species, PersonId by, Occurred when)
            implements TreeEvent {}

    /**
     * A girth was measured.
     *
     * @param treeId the tree
     * @param girth in whole millimetres
     * @param written as it was written, for whoever doubts it later
     * @param by who measured
     * @param when when
     */
    @StoredAs("tree.girth-measured")
    @Revision("1")
    record GirthMeasured(TreeId treeId, Length girth, WrittenGirth written, PersonId by, Occurred when)
            implements TreeEvent {}
}
