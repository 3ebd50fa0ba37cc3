package org.bandtrail.siteinstalls.trees;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.trees.TreeCommand.MeasureGirth;
import org.bandtrail.siteinstalls.trees.TreeCommand.RegisterTree;
import org.bandtrail.siteinstalls.trees.TreeEvent.GirthMeasured;
import org.bandtrail.siteinstalls.trees.TreeEvent.TreeRegistered;
import org.jspecify.annotations.Nullable;

/**
 * One tree of the register.
 *
 * @param treeId null before it is registered
 * @param girth the girth measured last, null if never
 * @param measured when that was, null if never
 */
public record Tree(
        @Nullable TreeId treeId,
        @Nullable Length girth,
        @Nullable Instant measured) {
    /** Before registration. */
    public static final Tree NONE = new Tree(null, null, null);

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
     * @throws TreeRefused if the identity is taken, the tag unusable, or the tree to measure not registered
     */
    public List<TreeEvent> decide(TreeCommand command) {
        return switch (command) {
            case RegisterTree register -> registered(register);
            case MeasureGirth measure -> {
                if (treeId == null) {
                    throw new TreeRefused.NotRegistered(measure.treeId());
                }
                yield List.of(measured(measure));
            }
        };
    }

    private List<TreeEvent> registered(RegisterTree register) {
        if (treeId != null) {
            throw new TreeRefused.AlreadyRegistered(register.treeId());
        }
        String tag = register.tag().strip();
        if (tag.isEmpty() || tag.length() > LONGEST_TAG) {
            throw new TreeRefused.TagUnusable(tag, LONGEST_TAG);
        }
        List<TreeEvent> events = new ArrayList<>();
        events.add(new TreeRegistered(
                register.treeId(),
                register.siteId(),
                tag,
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

    /** The tree after the event; an event that cannot follow is a damaged history and throws. */
    public Tree evolve(TreeEvent event) {
        return switch (event) {
            case TreeRegistered registered -> {
                if (treeId != null) {
                    throw new IllegalStateException("Tree %s is registered twice.".formatted(treeId));
                }
                yield new Tree(registered.treeId(), null, null);
            }
            case GirthMeasured measurement -> {
                if (treeId == null) {
                    throw new IllegalStateException(
                            "Tree %s is measured before it is registered.".formatted(measurement.treeId()));
                }
                yield withMeasurement(measurement);
            }
        };
    }

    private Tree withMeasurement(GirthMeasured measurement) {
        Instant happened = measurement.when().happened();
        boolean newer = measured == null || !happened.isBefore(measured);
        return newer ? new Tree(treeId, measurement.girth(), happened) : this;
    }
}
