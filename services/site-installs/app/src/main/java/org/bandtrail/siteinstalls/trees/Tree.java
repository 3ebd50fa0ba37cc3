package org.bandtrail.siteinstalls.trees;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.trees.TreeCommand.CorrectTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.MergeTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.NoteFoundAgain;
import org.bandtrail.siteinstalls.trees.TreeCommand.NoteGone;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.bandtrail.siteinstalls.trees.TreeCommand.UnmergeTree;
import org.bandtrail.siteinstalls.trees.TreeEvent.FoundAgain;
import org.bandtrail.siteinstalls.trees.TreeEvent.GirthMeasured;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeCorrected;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeGone;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeMerged;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeUnmerged;
import org.jspecify.annotations.Nullable;

/**
 * One tree of the register.
 *
 * @param treeId null before it is registered
 * @param details what the register says of it, null before it is registered
 * @param girth the girth measured last, null if never
 * @param measured when that was, null if never
 * @param gone whether it was said to be gone
 * @param mergedInto the tree that stands for this trunk too, null while it stands for itself
 */
public record Tree(
        @Nullable TreeId treeId,
        @Nullable TreeDetails details,
        @Nullable Length girth,
        @Nullable Instant measured,
        boolean gone,
        @Nullable TreeId mergedInto) {
    /** Before registration. */
    public static final Tree NONE = new Tree(null, null, null, null, false, null);

    private static final int LONGEST_TAG = 40;

    /**
     * The identity made of site and tag: both with a dash between, other signs than letters and digits as dashes.
     *
     * @throws IllegalArgumentException if that is no identity, for example because it is too long
     */
    public static TreeId named(SiteId siteId, String tag) {
        String spelt = tag.strip().toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]+", "-");
        return new TreeId("%s-%s".formatted(siteId, spelt.replaceAll("^-|-$", "")));
    }

    /**
     * Decides a command.
     *
     * @throws TreeRefused if the identity is taken, the tag unusable, the tree not registered, nothing is corrected, or
     *     the tree is merged already or not at all
     */
    public List<TreeEvent> decide(TreeCommand command) {
        if (command instanceof RegisterTree register) {
            return registered(register);
        }
        if (details == null) {
            throw new TreeRefused.NotRegistered(command.treeId());
        }
        return List.of(
                switch (command) {
                    case RegisterTree register -> throw new IllegalStateException("Decided above: " + register);
                    case MeasureGirth measure -> measured(measure);
                    case CorrectTree correct -> corrected(correct, details);
                    case NoteGone note ->
                        new TreeGone(note.treeId(), note.how(), note.reason().strip(), note.by(), note.when());
                    case NoteFoundAgain note -> foundAgain(note);
                    case MergeTree merge -> merged(merge);
                    case UnmergeTree unmerge -> unmerged(unmerge);
                });
    }

    private List<TreeEvent> registered(RegisterTree register) {
        if (treeId != null) {
            throw new TreeRefused.AlreadyRegistered(register.treeId());
        }
        List<TreeEvent> events = new ArrayList<>();
        events.add(new TreeRegistered(
                register.treeId(),
                register.siteId(),
                usable(register.tag().strip()),
                register.species().strip(),
                register.speciesCode(),
                register.position(),
                register.note().strip(),
                register.by(),
                register.when()));
        if (register.girth() != null) {
            events.add(measured(new MeasureGirth(
                    register.treeId(),
                    register.girth(),
                    register.girthHeight(),
                    null,
                    register.by(),
                    register.when())));
        }
        return List.copyOf(events);
    }

    private static String usable(String tag) {
        if (tag.isEmpty() || tag.length() > LONGEST_TAG) {
            throw new TreeRefused.TagUnusable(tag, LONGEST_TAG);
        }
        return tag;
    }

    private static GirthMeasured measured(MeasureGirth measure) {
        return new GirthMeasured(
                measure.treeId(),
                measure.girth().girth(),
                measure.girth(),
                measure.height(),
                measure.whileFitting(),
                measure.by(),
                measure.when());
    }

    private static TreeCorrected corrected(CorrectTree correct, TreeDetails before) {
        usable(correct.details().tag());
        if (correct.details().equals(before)) {
            throw new TreeRefused.NothingCorrected(
                    correct.treeId(), "all of it says so already. Change what is wrong and send it again.");
        }
        if (correct.reason().isBlank()) {
            throw new TreeRefused.NothingCorrected(
                    correct.treeId(), "no reason is given. Say in a few words why, for whoever reads it later.");
        }
        return new TreeCorrected(
                correct.treeId(), before, correct.details(), correct.reason().strip(), correct.by(), correct.when());
    }

    private FoundAgain foundAgain(NoteFoundAgain note) {
        if (!gone) {
            throw new TreeRefused.NotGone(note.treeId());
        }
        return new FoundAgain(note.treeId(), note.reason().strip(), note.by(), note.when());
    }

    private TreeMerged merged(MergeTree merge) {
        TreeId tree = merge.treeId();
        if (merge.kept().equals(tree)) {
            throw new TreeRefused.NotMerged(tree, "It cannot be merged into itself. Name the other tree.");
        }
        if (mergedInto != null) {
            throw new TreeRefused.NotMerged(
                    tree, "It is merged into [%s] already. Take that back first.".formatted(mergedInto));
        }
        return new TreeMerged(tree, merge.kept(), reason(tree, merge.reason()), merge.by(), merge.when());
    }

    private TreeUnmerged unmerged(UnmergeTree unmerge) {
        TreeId tree = unmerge.treeId();
        if (mergedInto == null) {
            throw new TreeRefused.NotMerged(tree, "It is not merged into another. There is nothing to take back.");
        }
        return new TreeUnmerged(tree, mergedInto, reason(tree, unmerge.reason()), unmerge.by(), unmerge.when());
    }

    private static String reason(TreeId tree, String reason) {
        if (reason.isBlank()) {
            throw new TreeRefused.NotMerged(tree, "No reason is given. Say in a few words why.");
        }
        return reason.strip();
    }

    /** The tree after the event; an event that cannot follow is a damaged history and throws. */
    public Tree evolve(TreeEvent event) {
        if (event instanceof TreeRegistered == (treeId != null)) {
            throw new IllegalStateException("Tree %s is registered twice, or something happened to it before: %s"
                    .formatted(event.treeId(), event));
        }
        return switch (event) {
            case TreeRegistered registered ->
                new Tree(registered.treeId(), registered.details(), null, null, false, null);
            case GirthMeasured measurement -> withMeasurement(measurement);
            case TreeCorrected corrected -> new Tree(treeId, corrected.after(), girth, measured, gone, mergedInto);
            case TreeGone tree -> new Tree(treeId, details, girth, measured, true, mergedInto);
            case FoundAgain tree -> new Tree(treeId, details, girth, measured, false, mergedInto);
            case TreeMerged merged -> new Tree(treeId, details, girth, measured, gone, merged.kept());
            case TreeUnmerged unmerged -> new Tree(treeId, details, girth, measured, gone, null);
        };
    }

    private Tree withMeasurement(GirthMeasured measurement) {
        Instant happened = measurement.when().happened();
        boolean newer = measured == null || !happened.isBefore(measured);
        return newer ? new Tree(treeId, details, measurement.girth(), happened, gone, mergedInto) : this;
    }
}
