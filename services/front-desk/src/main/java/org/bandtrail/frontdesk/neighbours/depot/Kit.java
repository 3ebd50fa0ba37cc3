package org.bandtrail.frontdesk.neighbours.depot;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What supply-stock says of kits and custody. Lengths in mm; quantities are mm of a reel, pieces of a batch. */
public final class Kit {
    private Kit() {}

    /**
     * One kit.
     *
     * @param state reserved, lapsed, released, out or settled
     * @param reopened how often a fact told late changed it after it was settled
     */
    public record Life(
            String kitId,
            String depotId,
            String crewId,
            String personId,
            String state,
            @Nullable Instant beganAt,
            @Nullable Instant reservedAt,
            @Nullable Instant until,
            @Nullable Instant releasedAt,
            @Nullable String releaseReason,
            @Nullable Instant handedOutAt,
            @Nullable String handedOutBy,
            @Nullable Instant signedAt,
            @Nullable String signedBy,
            @Nullable Instant settledAt,
            int reopened,
            @Nullable Instant reopenedAt,
            @Nullable String rule) {}

    /** A kit with its walk, what is collected for it, and its settlement. */
    public record Whole(Life kit, List<Stop> walk, List<Picked> collect, Settled settlement) {}

    /** One tree of the walk; lengths are those of one piece. */
    public record Stop(
            String treeId,
            @Nullable Long girthMm,
            int bands,
            @Nullable String tapeReel,
            long tapeMm,
            @Nullable String meshReel,
            long meshMm,
            long fasteners) {}

    /** A reel or batch that is taken, and from which bin; null is loose in the depot. */
    public record Picked(
            String id,
            String materialCode,
            String kind,
            @Nullable String bin,
            long there,
            long quantity) {
        /** The unit of there and quantity. */
        public String unit() {
            return kind.equals("FASTENER") ? "pieces" : "mm";
        }
    }

    /** The settlement of a kit and how it came about. */
    public record Settled(boolean settled, List<Line> lines, List<Turn> story) {}

    /** One reel or batch: handedOut = fitted + returned + scrapped + missing + settled + elsewhere + stillOut. */
    public record Line(
            String holding,
            String id,
            String personId,
            String unit,
            long handedOut,
            long fitted,
            long returned,
            long scrapped,
            long missing,
            long settled,
            long elsewhere,
            long stillOut) {}

    /** A turn in the story of a kit: settled, or reopened by a fact. */
    public record Turn(
            String turn,
            String what,
            String id,
            long quantity,
            String place,
            @Nullable Instant happenedAt,
            @Nullable Instant recordedAt) {}

    /** What a list takes and what would be chosen. */
    public record Planned(
            long tapeMm,
            long meshMm,
            long fasteners,
            String source,
            List<Tree> trees,
            List<Picked> picks,
            List<Lacking> lacking,
            List<PassedOver> passedOver,
            @Nullable List<Otherwise> otherwise) {
        /** A service that knows no wished reels says nothing of them. */
        public Planned {
            otherwise = otherwise == null ? List.of() : otherwise;
        }
    }

    /** A tree that is cut from another reel than the cut plan says, and why. */
    public record Otherwise(String treeId, String kind, String why) {}

    /** What one tree takes; lengths are those of one piece. */
    public record Tree(String treeId, @Nullable Long girthMm, int bands, long tapeMm, long meshMm, long fasteners) {}

    /** What the depot cannot give, in words. */
    public record Lacking(String materialCode, String kind, long quantity, String sentence) {}

    /** A reel that may not be used, and why. */
    public record PassedOver(String reelId, String why) {}

    /** The usual rule from girth to lengths. */
    public record Rule(
            int version,
            LocalDate validFrom,
            String source,
            String reason,
            long overlapMm,
            long tabMm,
            long meshExtraMm,
            long fastenerSpacingMm,
            long fewestFasteners,
            int reservedHours) {}

    /** What was in people's care at a moment, as known at another. */
    public record Custody(
            Instant at,
            Instant knownAt,
            List<Held> rows,
            @Nullable String next) {}

    /** What one person had of one reel or batch. */
    public record Held(
            String personId,
            String holding,
            String id,
            @Nullable String materialCode,
            @Nullable String kind,
            long withPerson,
            long missing,
            @Nullable String kitId,
            @Nullable Instant handedOutAt,
            @Nullable Instant movedAt) {
        /** The unit of the quantities. */
        public String unit() {
            return holding.equals("reel") ? "mm" : "pieces";
        }
    }
}
