package org.bandtrail.siteinstalls.meshpieces;

import org.bandtrail.eventstore.Refusal;

/** Why an entry about a piece of mesh is refused. */
public abstract sealed class MeshPieceRefused extends Refusal {
    private static final long serialVersionUID = 1L;

    private MeshPieceRefused(String message) {
        super(message);
    }

    /** Nobody has told of the piece. */
    public static final class Unknown extends MeshPieceRefused {
        private static final long serialVersionUID = 1L;

        Unknown(MeshPieceId pieceId) {
            super("No piece [%s] is known here. Check the tag, or write the piece down first.".formatted(pieceId));
        }

        @Override
        public String problem() {
            return "mesh-piece-unknown";
        }
    }
}
