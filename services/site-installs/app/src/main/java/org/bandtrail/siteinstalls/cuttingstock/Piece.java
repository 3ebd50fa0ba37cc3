package org.bandtrail.siteinstalls.cuttingstock;

/**
 * A piece to be cut, from one reel and in one length.
 *
 * @param id of the piece, once in a job
 * @param lengthMm length in mm, 1 to {@value CuttingJob#LONGEST_MM}
 */
public record Piece(String id, long lengthMm) {

    /** Refuses a length that is none. */
    public Piece {
        if (id.isBlank()) {
            throw new IllegalArgumentException("A piece of [%d mm] has no id. Give it one.".formatted(lengthMm));
        }
        CuttingJob.checkLength("piece", id, lengthMm);
    }
}
