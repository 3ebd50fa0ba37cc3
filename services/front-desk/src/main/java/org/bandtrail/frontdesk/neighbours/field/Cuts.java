package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What site-installs says of cut plans. Lengths in mm. */
public final class Cuts {
    private Cuts() {}

    /** A plan in a list. */
    public record Row(
            String planId,
            String depotId,
            LocalDate day,
            String state,
            int trees,
            int pieces,
            int uncut,
            long lossMm,
            long leastLossMm,
            boolean proven,
            String drawnBy,
            Instant drawnAt,
            @Nullable String movedBy,
            @Nullable Instant movedAt,
            @Nullable String kitId,
            @Nullable String reason) {}

    /** A plan with all its parts. */
    public record Whole(Row plan, Parts parts) {}

    /** What was drawn. */
    public record Parts(String measure, Use use, int policyVersion, List<Tree> trees, List<Material> materials) {}

    /** The kind of device, the programme and the pest. */
    public record Use(
            String device,
            @Nullable String programme,
            @Nullable String pest) {}

    /** A tree, in the order of the walk. */
    public record Tree(
            String treeId, String siteId, String tag, long girthMm, int bands, long fasteners, long others) {}

    /** What is cut from one material. */
    public record Material(
            String material,
            String kind,
            long usableFromMm,
            List<Reel> reels,
            List<Piece> uncut,
            List<Piece> tooLong,
            ToBuy toBuy,
            Quality quality) {

        /** Every piece, cut or not. */
        public Stream<Piece> pieces() {
            return Stream.of(reels.stream().flatMap(reel -> reel.pieces().stream()), uncut.stream(), tooLong.stream())
                    .flatMap(pieces -> pieces);
        }

        /**
         * The piece for a band.
         *
         * @throws IllegalStateException if the plan has none, which no kept plan does
         */
        public Piece piece(String treeId, int position) {
            return pieces().filter(piece -> piece.treeId().equals(treeId) && piece.position() == position)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(
                            "There is no piece of %s for band %d of %s.".formatted(material, position, treeId)));
        }

        /** The reel a piece comes off, null if none does. */
        public @Nullable String reelOf(Piece piece) {
            return reels.stream()
                    .filter(reel -> reel.pieces().contains(piece))
                    .map(Reel::reelId)
                    .findFirst()
                    .orElse(null);
        }

        /** How many pieces cannot be cut. */
        public int missing() {
            return uncut.size() + tooLong.size();
        }
    }

    /** What comes off one reel. */
    public record Reel(
            String reelId,
            @Nullable String bin,
            boolean opened,
            long lengthMm,
            List<Piece> pieces,
            long leftoverMm,
            long scrapMm,
            long bladeMm) {}

    /** One piece. */
    public record Piece(String treeId, int position, long lengthMm) {}

    /** What to buy for what cannot be cut. */
    public record ToBuy(int reels, long reelLengthMm, int longReels, long longestMm) {}

    /** How good a plan is. */
    public record Quality(
            long lossMm, long leastLossMm, int newReels, boolean proven, boolean fewestNewReels, boolean cutOff) {}

    /** The plan that was made or moved. */
    public record Kept(String planId) {}
}
