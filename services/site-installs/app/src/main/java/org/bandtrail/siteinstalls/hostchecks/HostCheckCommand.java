package org.bandtrail.siteinstalls.hostchecks;

import java.util.List;
import org.axonframework.modelling.command.TargetAggregateIdentifier;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;

/** What people say about hosts. */
public sealed interface HostCheckCommand {
    /** The tree. */
    TreeId treeId();

    /**
     * Somebody went through the key at a tree. A fact: it is never refused.
     *
     * @param treeId the tree
     * @param key the key as it was
     * @param answers what was answered, answers of the key
     * @param by who looked
     * @param when when
     */
    record NoteHostCheck(
            @TargetAggregateIdentifier TreeId treeId, HostKey key, List<HostAnswer> answers, PersonId by, Occurred when)
            implements HostCheckCommand {
        /** Keeps its own copy. */
        public NoteHostCheck {
            answers = List.copyOf(answers);
        }
    }
}
