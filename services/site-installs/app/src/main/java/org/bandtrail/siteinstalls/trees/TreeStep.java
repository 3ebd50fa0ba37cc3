package org.bandtrail.siteinstalls.trees;

import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.siteinstalls.trees.TreeEvent.FoundAgain;
import org.bandtrail.siteinstalls.trees.TreeEvent.GirthMeasured;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeCorrected;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeGone;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeMerged;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeUnmerged;
import org.jspecify.annotations.Nullable;

/**
 * One event of a tree as a line of its history.
 *
 * @param what in words
 * @param when when
 * @param by who
 * @param girthMm what was measured, null if nothing
 * @param heightMm above ground where that was, null if nobody told
 * @param band that was being fitted, null if none
 * @param note as written; for a correction the old value beside the new one
 */
record TreeStep(
        String what,
        Occurred when,
        PersonId by,
        @Nullable Long girthMm,
        @Nullable Long heightMm,
        @Nullable String band,
        String note) {

    static TreeStep of(TreeEvent event) {
        return switch (event) {
            case TreeRegistered tree -> plain("registered", tree.when(), tree.by(), "tag " + tree.tag());
            case GirthMeasured girth -> measured(girth);
            case TreeCorrected tree ->
                plain(
                        "corrected",
                        tree.when(),
                        tree.by(),
                        "%s; because: %s"
                                .formatted(String.join("; ", tree.after().changesFrom(tree.before())), tree.reason()));
            case TreeGone tree -> plain(tree.how().words(), tree.when(), tree.by(), tree.reason());
            case TreeMerged tree ->
                plain("merged", tree.when(), tree.by(), "into %s; because: %s".formatted(tree.kept(), tree.reason()));
            case TreeUnmerged tree ->
                plain(
                        "merge taken back",
                        tree.when(),
                        tree.by(),
                        "was in %s; because: %s".formatted(tree.kept(), tree.reason()));
            case FoundAgain tree -> plain("found again", tree.when(), tree.by(), tree.reason());
        };
    }

    private static TreeStep plain(String what, Occurred when, PersonId by, String note) {
        return new TreeStep(what, when, by, null, null, null, note);
    }

    private static TreeStep measured(GirthMeasured girth) {
        return new TreeStep(
                girth.whileFitting() == null ? "girth measured" : "girth measured while fitting",
                girth.when(),
                girth.by(),
                girth.girth().mm(),
                girth.height() == null ? null : girth.height().mm(),
                girth.whileFitting() == null ? null : girth.whileFitting().value(),
                "%s %s"
                        .formatted(
                                girth.written().text(), girth.written().basis().word()));
    }
}
