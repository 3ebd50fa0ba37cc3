package org.bandtrail.frontdesk.neighbours;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What inspections says. Lengths in mm. */
public final class Visits {
    private Visits() {}

    /** A band as a round sees it; visits come with one band only. */
    public record DueBand(
            String bandId,
            String treeId,
            @Nullable String siteId,
            @Nullable Instant lastVisitAt,
            @Nullable Instant dueAt,
            @Nullable String whyDue,
            @Nullable Long saturationPercent,
            @Nullable Long catchTotal,
            @Nullable String guardState,
            boolean bycatchOpen,
            @Nullable String tapeReelId,
            @Nullable Long tapeMm,
            @Nullable Instant fittedAt,
            @Nullable String state,
            @Nullable List<Visit> visits) {}

    /** One look at one band. */
    public record Visit(
            String visitId,
            @Nullable Instant happenedAt,
            @Nullable Instant recordedAt,
            @Nullable String personId,
            String answer,
            @Nullable Long saturationPercent,
            @Nullable Map<String, Long> catches,
            @Nullable Bycatch bycatch,
            @Nullable String guard,
            @Nullable List<Installs.Flag> flags) {}

    /** An animal that was not meant to be caught. */
    public record Bycatch(
            boolean seen,
            @Nullable String animal,
            @Nullable Boolean alive,
            @Nullable String action,
            @Nullable String handedTo) {}

    /** A visit was stored. */
    public record Seen(String visitId, @Nullable List<Installs.Flag> flags) {}

    /** A waste bag and what is in it. */
    public record Bag(
            String bagId,
            @Nullable Long tapeMm,
            @Nullable Long meshMm,
            @Nullable Long pieces,
            @Nullable String state,
            @Nullable String loadId) {}
}
