package org.bandtrail.kernel;

/** What kind of supply a material is. Tape and mesh are measured in millimetres of one reel, fasteners in pieces. */
public enum MaterialKind {
    /** Sticky tape. A piece that was on a tree never goes back into use. */
    TAPE,
    /** Wire mesh or screen of the guard. A sound piece can go back into use. */
    MESH,
    /** Pins, tacks, staples. Counted, never measured. */
    FASTENER;

    /** Tells whether this material comes on reels and is measured in length. */
    public boolean onReels() {
        return this != FASTENER;
    }

    /** Tells whether a piece taken off a tree may be used again. */
    public boolean reusable() {
        return this != TAPE;
    }
}
