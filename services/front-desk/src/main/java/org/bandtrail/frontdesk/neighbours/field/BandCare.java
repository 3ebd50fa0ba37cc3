package org.bandtrail.frontdesk.neighbours.field;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;

/** What site-installs knows about the life of bands beyond their list: the removal alarm, and mesh used again. */
public final class BandCare {
    private static final ParameterizedTypeReference<Rows<MeshPiece>> PIECES = new ParameterizedTypeReference<>() {};
    private static final String PATH = "/mesh-pieces";
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public BandCare(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** How many bands are past the day by which they must be off, and how many are near it. */
    public record Alarm(long past, long near, @Nullable LocalDate first, int noticeDays, String source) {}

    /** A piece of mesh that is used again; history comes with one piece only. Lengths in mm. */
    public record MeshPiece(
            String pieceId,
            String reelId,
            long lengthMm,
            @Nullable Long widthMm,
            @Nullable Long openingMm,
            @Nullable String wear,
            @Nullable String bandId,
            @Nullable String place,
            Instant since,
            long timesFitted,
            @Nullable List<Step> history) {}

    /** One line of the history of a piece. */
    public record Step(
            String what,
            Instant happenedAt,
            @Nullable String by,
            @Nullable String bandId,
            String note) {}

    /** The piece an entry was about. */
    public record Kept(String pieceId) {}

    /** A photo that was attached. */
    public record Attached(String photoId) {}

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** The alarm of one site or one tree, or of all bands if both are null. */
    public Alarm alarm(@Nullable String site, @Nullable String tree) {
        Map<String, String> asked = Map.of("site", site == null ? "" : site, "tree", tree == null ? "" : tree);
        return neighbour.get("/bands/removals", asked, Alarm.class);
    }

    /** Pieces by state, wear, place or text. */
    public Rows<MeshPiece> pieces(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get(PATH, asked, PIECES);
    }

    /** All pieces that answer to this, page after page. */
    public List<MeshPiece> allPieces(Map<String, String> asked) {
        return neighbour.everything(after -> pieces(Rows.withAfter(asked, after)));
    }

    /** One piece with its history. */
    public MeshPiece piece(String pieceId) {
        return neighbour.get(PATH + "/" + pieceId, Map.of(), MeshPiece.class);
    }
}
