package org.bandtrail.siteinstalls.bands;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.kernel.TreeId;
import org.bandtrail.siteinstalls.devices.DeviceKinds;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.knownreels.KnownReels;
import org.bandtrail.siteinstalls.meshpieces.MeshPieces;
import org.bandtrail.siteinstalls.policies.CutPolicies;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;
import org.bandtrail.siteinstalls.sites.Sites;
import org.bandtrail.siteinstalls.trees.TreeView;
import org.bandtrail.siteinstalls.trees.Trees;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/**
 * Opens the books for fittings that arrive together: five questions to the database for all of them
 * and one more for each piece of reused mesh. Bands of the same
 * delivery see each other, so that two crews' bands on one tree are noticed even when they come at once.
 */
@Component
class BandBooks {
    private static final Logger LOG = LoggerFactory.getLogger(BandBooks.class);
    private static final Duration PATIENCE = Duration.ofSeconds(1);
    private final Sites sites;
    private final Trees trees;
    private final Bands bands;
    private final KnownReels reels;
    private final CutPolicies policies;
    private final DeviceKinds kinds;
    private final MeshPieces pieces;
    private final ObjectProvider<Projectors> projectors;

    BandBooks(
            Sites sites,
            Trees trees,
            Bands bands,
            KnownReels reels,
            CutPolicies policies,
            DeviceKinds kinds,
            MeshPieces pieces,
            ObjectProvider<Projectors> projectors) {
        this.sites = sites;
        this.trees = trees;
        this.bands = bands;
        this.reels = reels;
        this.policies = policies;
        this.kinds = kinds;
        this.pieces = pieces;
        this.projectors = projectors;
    }

    /**
     * A fitting and when it was done.
     *
     * @param fitting what the crew says
     * @param happened when
     */
    record Dated(Fitting fitting, Instant happened) {}

    /** What the books say to each fitting, in their order. Must be asked before a command of the same work is sent. */
    List<Books> open(List<Dated> fittings) {
        Collection<TreeId> wanted = fittings.stream()
                .map(dated -> dated.fitting().treeId())
                .distinct()
                .toList();
        // A tree, a band or a site entered a moment ago may not be in the rows yet.
        if (!projectors.getObject().caughtUp(PATIENCE)) {
            LOG.warn("The rows lag behind; flags of {} fittings may name what is already entered", fittings.size());
        }
        Map<TreeId, TreeView> known = trees.registered(wanted);
        Map<TreeId, List<BandId>> up = new HashMap<>(bands.up(wanted));
        Set<SiteId> sitesKnown = sites.registered(fittings.stream()
                .map(dated -> dated.fitting().siteId())
                .distinct()
                .toList());
        Map<ReelId, KnownReel> reelsKnown = reels.known(reelsOf(fittings));
        Map<BandId, Instant> fitted = new HashMap<>(bands.fitted(
                fittings.stream().map(dated -> dated.fitting().bandId()).toList()));
        Map<Asked, CutPolicyVersion> versions = new HashMap<>();
        List<Books> books = new ArrayList<>();
        for (Dated dated : fittings) {
            Fitting fitting = dated.fitting();
            List<BandId> onTree = new ArrayList<>(up.getOrDefault(fitting.treeId(), List.of()));
            onTree.remove(fitting.bandId());
            books.add(new Books(
                    sitesKnown.contains(fitting.siteId()),
                    registered(known.get(fitting.treeId())),
                    onTree,
                    fitted.get(fitting.bandId()),
                    reelsKnown.get(fitting.tape().reelId()),
                    fitting.mesh() == null
                            ? null
                            : reelsKnown.get(fitting.mesh().reelId()),
                    versions.computeIfAbsent(Asked.of(dated), this::policy),
                    kinds.named(fitting.details().device()).orElse(null),
                    fitting.meshPiece() == null
                            ? null
                            : pieces.named(fitting.meshPiece()).orElse(null)));
            fitted.put(fitting.bandId(), dated.happened());
            onTree.add(fitting.bandId());
            up.put(fitting.treeId(), onTree);
        }
        return List.copyOf(books);
    }

    /** By what the policy of a fitting is looked up. */
    private record Asked(
            LocalDate day,
            @Nullable String programme,
            @Nullable String pest) {
        static Asked of(Dated dated) {
            FitDetails details = dated.fitting().details();
            return new Asked(
                    LocalDate.ofInstant(dated.happened(), ZoneOffset.UTC), details.programme(), details.pest());
        }
    }

    private CutPolicyVersion policy(Asked asked) {
        return policies.on(asked.day(), asked.programme(), asked.pest());
    }

    private static List<ReelId> reelsOf(List<Dated> fittings) {
        List<ReelId> reels = new ArrayList<>();
        for (Dated dated : fittings) {
            reels.add(dated.fitting().tape().reelId());
            if (dated.fitting().mesh() != null) {
                reels.add(dated.fitting().mesh().reelId());
            }
        }
        return reels;
    }

    private static Books.@Nullable RegisteredTree registered(@Nullable TreeView tree) {
        if (tree == null) {
            return null;
        }
        Length girth = tree.girthMm() == null ? null : Length.ofMm(tree.girthMm());
        return new Books.RegisteredTree(new SiteId(tree.siteId()), girth, tree.mergedInto());
    }
}
