package org.bandtrail.supplystock.discrepancies;

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
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.bandtrail.supplystock.reels.ReelCommand;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * Sends the moves that put an open question right, inside one work. What the field had more of goes to the place where
 * the material really is; what was recorded too much comes back from there; the other reel's half goes the other way.
 */
@Component
class PuttingRight {
    /** From tree to bag to load, and once more if a piece was put back into use in between. */
    private static final int STEPS = 4;

    private final JdbcClient jdbc;
    private final Findings findings;
    private final Commands commands;

    PuttingRight(JdbcClient jdbc, Findings findings, Commands commands) {
        this.jdbc = jdbc;
        this.findings = findings;
        this.commands = commands;
    }

    /**
     * How a question is put right.
     *
     * @param material {@code reel} or {@code batch}
     * @param place where it does not add up
     * @param through the place where the material really is, or was not
     * @param quantity millimetres or pieces
     * @param other the other reel or batch that is concerned, or null
     */
    record Way(
            String material,
            String id,
            Place place,
            Place through,
            long quantity,
            @Nullable String other,
            String reason,
            PersonId by,
            Occurred occurred) {
        boolean reel() {
            return material.equals("reel");
        }
    }

    /**
     * Sends the one or two moves.
     *
     * @param balance of the place that does not add up, below zero if too much was recorded
     * @throws WaitingRefused if the other reel or batch has nothing this could be set against
     */
    void putRight(Way way, long balance) {
        boolean out = balance > 0;
        SiteId site = site(way);
        String other = way.other();
        String giver = out && other != null ? other : way.id();
        Place through =
                follow(way.reel() ? "reel" : "batch", giver, way.through(), out && other == null ? 1 : way.quantity());
        send(way, way.id(), out ? way.place() : through, out ? through : way.place(), other, site);
        if (other != null) {
            Place theirs = opposite(way, other, out);
            send(way, other, out ? through : theirs, out ? theirs : through, way.id(), site);
        }
    }

    /**
     * Where the piece is by now: what was on a tree may be in a bag or gone with a load since, and a correction has to
     * begin where the books have it.
     */
    private Place follow(String prefix, String id, Place told, long quantity) {
        Place place = told;
        for (int step = 0; step < STEPS && inTheField(place) && at(prefix, id, place) < quantity; step++) {
            Place from = place;
            place = jdbc.sql("SELECT target FROM %s_history WHERE id = ? AND source = ? ORDER BY position DESC LIMIT 1"
                            .formatted(prefix))
                    .params(id, from.toString())
                    .query(String.class)
                    .optional()
                    .map(Place::parse)
                    .orElse(told);
        }
        return place;
    }

    private static boolean inTheField(Place place) {
        return place.kind() == PlaceKind.TREE || place.kind() == PlaceKind.BAG;
    }

    private long at(String prefix, String id, Place place) {
        return jdbc.sql(
                        "SELECT coalesce(sum(quantity), 0) FROM %s_place WHERE id = ? AND place_kind = ? AND place_id = ?"
                                .formatted(prefix))
                .params(id, place.kind().word(), place.id())
                .query(Long.class)
                .single();
    }

    private void send(Way way, String id, Place source, Place target, @Nullable String other, @Nullable SiteId site) {
        commands.send(
                way.reel()
                        ? new ReelCommand.PutRight(
                                new ReelId(id),
                                source,
                                target,
                                Length.ofMm(way.quantity()),
                                other == null ? null : new ReelId(other),
                                site,
                                way.reason(),
                                way.by(),
                                way.occurred())
                        : new BatchCommand.PutRight(
                                new BatchId(id),
                                source,
                                target,
                                Pieces.of(way.quantity()),
                                other == null ? null : new BatchId(other),
                                site,
                                way.reason(),
                                way.by(),
                                way.occurred()));
    }

    /** Where the other one lacks or has too much; or the person's hands, while it is still out with that person. */
    private Place opposite(Way way, String other, boolean out) {
        return findings.open().stream()
                .filter(question -> question.finding().material().equals(way.material())
                        && question.finding().id().equals(other)
                        && question.finding().quantity() > 0 != out
                        && Math.abs(question.finding().quantity()) >= way.quantity())
                .map(OpenQuestion::place)
                .findFirst()
                .orElseGet(() -> stillOut(way, other));
    }

    private Place stillOut(Way way, String other) {
        boolean ofPerson = way.place().kind() == PlaceKind.CREW || way.place().kind() == PlaceKind.MISSING;
        Place crew = new Place(PlaceKind.CREW, way.place().id());
        boolean there = ofPerson && at(way.reel() ? "reel" : "batch", other, crew) > 0;
        if (!there) {
            throw new WaitingRefused.NothingOppositeThere(
                    other,
                    way.reel()
                            ? Length.ofMm(way.quantity()).toString()
                            : Pieces.of(way.quantity()).toString());
        }
        return crew;
    }

    /** The site that paid for what is at this place, or whose tree it is; null if the books name none. */
    private @Nullable SiteId site(Way way) {
        return jdbc.sql("""
                        SELECT site FROM (
                            SELECT substr(account, 6) AS site, position FROM %1$s_history
                             WHERE id IN (:id, :other) AND :through IN (source, target) AND account LIKE 'site:%%'
                            UNION ALL
                            SELECT site_id, 0 FROM tree_site WHERE 'tree:' || tree_id = :through) AS payers
                        ORDER BY position DESC LIMIT 1""".formatted(way.reel() ? "reel" : "batch"))
                .param("id", way.id())
                .param("other", way.other() == null ? way.id() : way.other())
                .param("through", way.through().toString())
                .query(String.class)
                .optional()
                .map(SiteId::new)
                .orElse(null);
    }
}
