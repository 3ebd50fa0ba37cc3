package org.bandtrail.siteinstalls.trees;

import java.util.List;
import org.bandtrail.eventstore.FirstEvents;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.springframework.stereotype.Component;

/** Registers many trees at once; each is decided by {@link Tree} like a single one. */
@Component
public class TreeRegistration {
    private final FirstEvents firstEvents;

    TreeRegistration(FirstEvents firstEvents) {
        this.firstEvents = firstEvents;
    }

    /**
     * Registers a page of trees that are new, inside a work.
     *
     * @throws TreeRefused if a tag is unusable
     */
    public void register(List<RegisterTree> trees) {
        firstEvents.append(
                TreeAggregate.DECLARED,
                trees.stream()
                        .map(tree -> new FirstEvents.Beginning(tree.treeId(), Tree.NONE.decide(tree)))
                        .toList());
    }
}
