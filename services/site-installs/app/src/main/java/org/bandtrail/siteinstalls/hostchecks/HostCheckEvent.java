package org.bandtrail.siteinstalls.hostchecks;

import java.util.List;
import org.axonframework.serialization.Revision;
import org.bandtrail.eventstore.StoredAs;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.species.EppoCode;

/** What was found out about hosts. */
public sealed interface HostCheckEvent {
    /** The tree. */
    TreeId treeId();

    /**
     * A tree was checked.
     *
     * @param treeId the tree
     * @param pest the pest whose hosts the key tells
     * @param keyVersion the edition of the key
     * @param answers what was answered
     * @param verdict what that says
     * @param by who looked
     * @param when when
     */
    @StoredAs("host-check.made")
    @Revision("1")
    record HostCheckMade(
            TreeId treeId,
            EppoCode pest,
            int keyVersion,
            List<HostAnswer> answers,
            HostVerdict verdict,
            PersonId by,
            Occurred when)
            implements HostCheckEvent {
        /** Keeps its own copy. */
        public HostCheckMade {
            answers = List.copyOf(answers);
        }
    }
}
