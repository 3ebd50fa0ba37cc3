package org.bandtrail.siteinstalls.bands;

/** In what way a fitted band contradicts the books or the policy. The code is stored and never renamed. */
public enum BandFlag {
    /** The register has no such tree. */
    TREE_UNKNOWN("tree-unknown", "treeId", true),
    /** The register has found that the tree is the same trunk as another. */
    TREE_MERGED("tree-merged", "treeId", false),
    /** Another band hangs on the tree; normal for some pests, a mix-up for others. */
    TREE_ALREADY_BANDED("tree-already-banded", "treeId", true),
    /** No such site is registered. */
    SITE_UNKNOWN("site-unknown", "siteId", true),
    /** The register has the tree at another site. */
    SITE_DIFFERS("site-differs", "siteId", true),
    /** A band of this identity was fitted before. */
    BAND_FITTED_BEFORE("band-fitted-before", "bandId", true),
    /** Neither the crew nor the register knows the girth. */
    GIRTH_MISSING("girth-missing", "girth", true),
    /** The trunk is thinner than the policy bands. */
    GIRTH_BELOW_MINIMUM("girth-below-minimum", "girth", true),
    /** The girth is too large or too far from the last one. */
    GIRTH_IMPLAUSIBLE("girth-implausible", "girth", true),
    /** The band hangs lower or higher than usual. */
    HEIGHT_UNUSUAL("height-unusual", "height", true),
    /** The tape does not reach round the trunk. */
    TAPE_TOO_SHORT("tape-too-short", "tape.length", true),
    /** Much more tape than the trunk takes. */
    TAPE_UNLIKELY("tape-unlikely", "tape.length", true),
    /** Supply-stock has not told of the tape's reel. */
    TAPE_REEL_UNKNOWN("tape-reel-unknown", "tape.reelId", true),
    /** The reel named for the tape holds something else. */
    TAPE_REEL_WRONG_KIND("tape-reel-wrong-kind", "tape.reelId", true),
    /** Wider tape than the policy takes without a reason. */
    TAPE_TOO_WIDE("tape-too-wide", "tape.reelId", true),
    /** Nobody described this kind of device. */
    DEVICE_UNKNOWN("device-unknown", "device", true),
    /** A kind that is fitted only with a reason. */
    DEVICE_QUESTIONED("device-questioned", "device", true),
    /** The guard is open below, and the policy wants it closed. */
    GUARD_OPEN_BELOW("guard-open-below", "guardClosedBelow", true),
    /** No guard keeps wildlife off the tape. */
    GUARD_MISSING("guard-missing", "mesh", true),
    /** The guard stands nearer to the tape than the policy asks. */
    GUARD_TOO_CLOSE("guard-too-close", "mesh.length", true),
    /** Much more mesh than the trunk takes. */
    MESH_UNLIKELY("mesh-unlikely", "mesh.length", true),
    /** Supply-stock has not told of the mesh's reel. */
    MESH_REEL_UNKNOWN("mesh-reel-unknown", "mesh.reelId", true),
    /** The reel named for the mesh holds something else. */
    MESH_REEL_WRONG_KIND("mesh-reel-wrong-kind", "mesh.reelId", true),
    /** The mesh opens wider than keeps small animals out. */
    GUARD_OPENING_TOO_WIDE("guard-opening-too-wide", "mesh.reelId", true),
    /** The guard does not cover the tape's width. */
    GUARD_TOO_NARROW("guard-too-narrow", "mesh.reelId", true),
    /** Nobody told of the piece of reused mesh. */
    MESH_PIECE_UNKNOWN("mesh-piece-unknown", "meshPiece", true),
    /** The piece hangs on another band, as far as anybody knows. */
    MESH_PIECE_IN_USE("mesh-piece-in-use", "meshPiece", true),
    /** Somebody graded the piece as scrap. */
    MESH_PIECE_SCRAP("mesh-piece-scrap", "meshPiece", true),
    /** The piece differs from what is known of it: another reel, or longer than it was. */
    MESH_PIECE_DIFFERS("mesh-piece-differs", "meshPiece", true),
    /** The crew departed from what was proposed and did not say why. */
    DEVIATION_UNEXPLAINED("deviation-unexplained", "deviation", true),
    /** Written down days after it was done. */
    RECORDED_LATE("recorded-late", "happenedAt", false),
    /** Done after it was written down: a clock is wrong. */
    CLOCK_AHEAD("clock-ahead", "happenedAt", true);

    private final String code;
    private final String field;
    private final boolean asked;

    BandFlag(String code, String field, boolean asked) {
        this.code = code;
        this.field = field;
        this.asked = asked;
    }

    /** The stored word. */
    public String code() {
        return code;
    }

    /** The field of the request that it is about. */
    public String field() {
        return field;
    }

    /** Whether the person can still answer it before the fact is stored. */
    public boolean asked() {
        return asked;
    }
}
