package org.bandtrail.siteinstalls.contract.v1;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * What a work plan needs now. Each event is the whole state of its plan: a reader replaces what it knew, and passes
 * over an event whose sequence is not higher. A plan that is done or called off needs nothing.
 *
 * @param planId the plan
 * @param sequence grows with each event about the same plan
 * @param lines one for each material, empty if nothing is needed any more
 * @param happenedAt when it was agreed, changed, done or called off
 * @param recordedAt when site-installs learnt of it
 * @param by who did that
 */
public record MaterialNeeded(
        String planId, long sequence, List<Line> lines, Instant happenedAt, Instant recordedAt, String by) {
    /** The type attribute of the envelope. */
    public static final String TYPE = "site-installs.material-needed.v1";

    /** Keeps its own copy of the lines. */
    public MaterialNeeded {
        lines = List.copyOf(lines);
    }

    /** What the event is about: the plan. Order is kept per subject. */
    public String subject() {
        return "plan/" + planId;
    }

    /**
     * One material.
     *
     * @param depotId where it is to come from
     * @param day first day of the work
     * @param lastDay last day of the work
     * @param materialCode the supply item
     * @param kind {@code TAPE}, {@code MESH} or {@code FASTENER}
     * @param quantity millimetres without the waste of cutting, or pieces of fasteners; above zero
     * @param longestMm the longest piece in millimetres, which one reel must have whole; 0 for fasteners
     */
    public record Line(
            String depotId,
            LocalDate day,
            LocalDate lastDay,
            String materialCode,
            String kind,
            long quantity,
            long longestMm) {}
}
