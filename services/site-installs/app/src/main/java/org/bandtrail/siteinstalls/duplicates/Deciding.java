package org.bandtrail.siteinstalls.duplicates;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.trees.TreeCommand.MergeTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.UnmergeTree;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.springframework.stereotype.Component;

/** Decides of pairs, inside the work of a request and one after another, so that no tree is merged in a ring. */
@Component
class Deciding {
    private final Commands commands;
    private final Trees trees;
    private final PairDecisions decisions;
    private final Clock clock;

    Deciding(Commands commands, Trees trees, PairDecisions decisions, Clock clock) {
        this.commands = commands;
        this.trees = trees;
        this.decisions = decisions;
        this.clock = clock;
    }

    /**
     * Merges one tree into another.
     *
     * @throws PairRefused if one is not registered, the kept one is merged away, or the other stands for trees itself
     * @throws org.bandtrail.siteinstalls.trees.TreeRefused if the tree is merged already
     */
    void merge(TreeId kept, TreeId merged, String reason, PersonId by) {
        ready(kept, merged, reason);
        for (PairDecision before : decisions.merges(kept)) {
            if (kept.value().equals(before.merged())) {
                throw new PairRefused(
                        kept,
                        merged,
                        "[%s] is merged into [%s]. Keep [%s], or take that back first."
                                .formatted(kept, before.kept(), before.kept()));
            }
        }
        for (PairDecision before : decisions.merges(merged)) {
            if (merged.value().equals(before.kept())) {
                throw new PairRefused(
                        kept,
                        merged,
                        "[%s] stands for [%s] too. Keep [%s], or take that back first."
                                .formatted(merged, before.merged(), merged));
            }
        }
        Occurred now = Occurred.at(clock.instant());
        commands.send(new MergeTree(merged, kept, reason, by, now));
        decisions.same(kept, merged, reason.strip(), by, now.recorded());
    }

    /**
     * Notes that two trees are not the same.
     *
     * @throws PairRefused if one is not registered or they are merged
     */
    void apart(TreeId one, TreeId other, String reason, PersonId by) {
        ready(one, other, reason);
        decisions.of(one, other).filter(before -> before.kept() != null).ifPresent(before -> {
            throw new PairRefused(one, other, "They are merged. Take that back first.");
        });
        decisions.apart(one, other, reason.strip(), by, clock.instant());
    }

    /**
     * Takes back what was decided last.
     *
     * @throws PairRefused if nothing is decided
     */
    void undo(TreeId one, TreeId other, String reason, PersonId by) {
        ready(one, other, reason);
        PairDecision before = decisions
                .of(one, other)
                .orElseThrow(() -> new PairRefused(one, other, "There is nothing to take back."));
        Occurred now = Occurred.at(clock.instant());
        String merged = before.merged();
        if (merged != null) {
            commands.send(new UnmergeTree(new TreeId(merged), reason, by, now));
        }
        decisions.open(one, other, reason.strip(), by, now.recorded());
    }

    private void ready(TreeId one, TreeId other, String reason) {
        if (one.equals(other)) {
            throw new PairRefused(one, other, "That is one tree. Name two.");
        }
        if (reason.isBlank()) {
            throw new PairRefused(one, other, "No reason is given. Say in a few words how you know.");
        }
        Map<TreeId, TreeView> known = trees.registered(List.of(one, other));
        for (TreeId tree : List.of(one, other)) {
            if (!known.containsKey(tree)) {
                throw new PairRefused(one, other, "[%s] is not in the register. Check its number.".formatted(tree));
            }
        }
        decisions.oneAtATime();
    }
}
