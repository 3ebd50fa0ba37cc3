package org.bandtrail.siteinstalls.bands;

import java.time.Instant;
import java.util.List;
import org.bandtrail.kernel.BandId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.devices.DeviceKind;
import org.bandtrail.siteinstalls.knownreels.KnownReel;
import org.bandtrail.siteinstalls.meshpieces.MeshPieceView;
import org.bandtrail.siteinstalls.policies.CutPolicyVersion;
import org.jspecify.annotations.Nullable;

/**
 * What the books say about the tree and the reels of a fitting when it arrives. A fitting is compared with them, never
 * made to fit them.
 *
 * @param siteKnown whether the site of the fitting is registered
 * @param tree the tree, null if it is not registered
 * @param bandsUp other bands that hang on the tree
 * @param fittedBefore when a band of this identity was fitted before, null if never
 * @param tapeReel what is known of the tape's reel, null if nothing
 * @param meshReel what is known of the mesh's reel, null if nothing or there is no mesh
 * @param policy the policy in force on the day of the fitting, for its programme and pest
 * @param device the kind of the fitted device, null if nobody described it
 * @param meshPiece what is known of the piece of reused mesh, null if nothing or it was cut from its reel
 */
public record Books(
        boolean siteKnown,
        @Nullable RegisteredTree tree,
        List<BandId> bandsUp,
        @Nullable Instant fittedBefore,
        @Nullable KnownReel tapeReel,
        @Nullable KnownReel meshReel,
        CutPolicyVersion policy,
        @Nullable DeviceKind device,
        @Nullable MeshPieceView meshPiece) {

    /** With a guard cut from its reel. */
    public Books(
            boolean siteKnown,
            @Nullable RegisteredTree tree,
            List<BandId> bandsUp,
            @Nullable Instant fittedBefore,
            @Nullable KnownReel tapeReel,
            @Nullable KnownReel meshReel,
            CutPolicyVersion policy,
            @Nullable DeviceKind device) {
        this(siteKnown, tree, bandsUp, fittedBefore, tapeReel, meshReel, policy, device, null);
    }

    /** Keeps its own copy. */
    public Books {
        bandsUp = List.copyOf(bandsUp);
    }

    /**
     * A tree of the register.
     *
     * @param siteId where the register has it
     * @param girth last measured, null if never
     * @param mergedInto the tree that stands for this trunk too, null while it stands for itself
     */
    public record RegisteredTree(
            SiteId siteId, @Nullable Length girth, @Nullable String mergedInto) {
        /** One that stands for itself. */
        public RegisteredTree(SiteId siteId, @Nullable Length girth) {
            this(siteId, girth, null);
        }
    }

    /** The same books when the band itself remembers an earlier fitting. */
    Books with(@Nullable Instant remembered) {
        return remembered == null
                ? this
                : new Books(siteKnown, tree, bandsUp, remembered, tapeReel, meshReel, policy, device, meshPiece);
    }

    /** The registered girth, null if there is none. */
    public @Nullable Length registeredGirth() {
        return tree == null ? null : tree.girth();
    }
}
