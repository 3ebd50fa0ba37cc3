package org.bandtrail.supplystock.received;

import java.time.Instant;
import org.bandtrail.eventstore.Commands;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.kernel.ReelId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.batches.BatchCommand;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Puts a move that a field service told into the books of its reel or batch. */
@Component
class FieldFacts {
    private final Commands commands;

    FieldFacts(Commands commands) {
        this.commands = commands;
    }

    /**
     * Records one move.
     *
     * @param fact what it belongs to, for people who read the history: for example {@code band B-0001}
     * @param site who pays if the material leaves stock
     */
    void record(Told told, String material, String id, long quantity, String source, String target) {
        Place from = Place.parse(source);
        Place to = Place.parse(target);
        SiteId site = told.site() == null ? null : new SiteId(told.site());
        PersonId by = new PersonId(told.by());
        Occurred occurred = new Occurred(told.happenedAt(), told.recordedAt());
        commands.send(
                switch (material) {
                    case "reel" ->
                        new ReelCommand.RecordFact(
                                new ReelId(id), told.fact(), from, to, Length.ofMm(quantity), site, by, occurred);
                    case "batch" ->
                        new BatchCommand.RecordFact(
                                new BatchId(id), told.fact(), from, to, Pieces.of(quantity), site, by, occurred);
                    default ->
                        throw new IllegalArgumentException(
                                "Material [%s] is neither reel nor batch.".formatted(material));
                });
    }

    /** What all moves of one fact share. */
    record Told(String fact, @Nullable String site, String by, Instant happenedAt, Instant recordedAt) {}
}
