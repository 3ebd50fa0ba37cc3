package org.bandtrail.eventexchange;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * What this service tells the others, written in the transaction of the private events it follows from: either both are
 * kept or neither. An append outside a transaction is refused, because it could survive what it reports.
 */
public final class Outbox {
    private final JdbcClient jdbc;
    private final OutboxBell bell;

    public Outbox(JdbcClient jdbc, OutboxBell bell) {
        this.jdbc = jdbc;
        this.bell = bell;
    }

    /** As {@link #append(UUID, List)}. */
    public void append(UUID causeEventId, Object... contractEvents) {
        append(causeEventId, List.of(contractEvents));
    }

    /**
     * Appends contract records, in this order, to what is published.
     *
     * @param causeEventId identifier of the private event they follow from. The published identifiers are derived from
     *     it, so that the same cause published twice is refused by the database instead of being told twice.
     * @param contractEvents records that follow the convention of {@link PublishedName}
     * @throws IllegalStateException outside a transaction
     * @throws IllegalArgumentException naming the record if it does not follow the convention
     * @throws org.springframework.dao.DuplicateKeyException if this cause was already published
     */
    public void append(UUID causeEventId, List<?> contractEvents) {
        appendAll(contractEvents.stream()
                .map(event -> new Told(causeEventId, event))
                .toList());
    }

    /**
     * What follows from one private event.
     *
     * @param causeEventId identifier of the private event
     * @param contractEvent record that follows the convention of {@link PublishedName}
     */
    public record Told(UUID causeEventId, Object contractEvent) {}

    /**
     * Appends what one work tells, in this order and with one statement: a crew that sends five hundred fittings does not
     * wait for five hundred answers of the database.
     *
     * @param told records with their causes; several of one cause stand together
     * @throws IllegalStateException outside a transaction
     * @throws IllegalArgumentException naming the record if it does not follow the convention
     * @throws org.springframework.dao.DuplicateKeyException if one of the causes was already published
     */
    public void appendAll(List<Told> told) {
        if (told.isEmpty()) {
            return;
        }
        requireTransaction(told.getFirst().causeEventId());
        insert(rows(told));
        ringAfterCommit();
    }

    /**
     * As {@link #appendAll}, but passes over what was told before. With it a service tells the history that it had
     * before it learnt to tell it, while new events are told as they happen.
     *
     * @return how many were told now
     */
    public int appendUntold(List<Told> told) {
        List<Row> rows = rows(told);
        Set<UUID> already = rows.isEmpty() ? Set.of() : toldAlready(rows);
        List<Row> untold =
                rows.stream().filter(row -> !already.contains(row.id())).toList();
        if (!untold.isEmpty()) {
            requireTransaction(told.getFirst().causeEventId());
            insert(untold);
            ringAfterCommit();
        }
        return untold.size();
    }

    private static void requireTransaction(UUID cause) {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException(
                    "Outbox.append needs the transaction of the private event [%s]. Maybe the caller has none."
                            .formatted(cause));
        }
    }

    /**
     * The identifier of a published event: UUID version 5 (RFC 9562) of the private event's identifier, the published
     * name and the index among what was published together.
     */
    public static UUID publishedId(UUID causeEventId, String type, int index) {
        try {
            MessageDigest sha1 = MessageDigest.getInstance("SHA-1");
            sha1.update(ByteBuffer.allocate(Long.BYTES * 2)
                    .putLong(causeEventId.getMostSignificantBits())
                    .putLong(causeEventId.getLeastSignificantBits())
                    .array());
            ByteBuffer digest = ByteBuffer.wrap(sha1.digest((type + "#" + index).getBytes(StandardCharsets.UTF_8)));
            long high = (digest.getLong() & 0xFFFF_FFFF_FFFF_0FFFL) | 0x5000L;
            long low = (digest.getLong() & 0x3FFF_FFFF_FFFF_FFFFL) | 0x8000_0000_0000_0000L;
            return new UUID(high, low);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Every JDK has SHA-1.", missing);
        }
    }

    private static List<Row> rows(List<Told> told) {
        List<Row> rows = new ArrayList<>();
        int index = 0;
        for (int row = 0; row < told.size(); row++) {
            Told each = told.get(row);
            boolean sameCause = row > 0 && told.get(row - 1).causeEventId().equals(each.causeEventId());
            index = sameCause ? index + 1 : 0;
            String type = PublishedName.of(each.contractEvent().getClass());
            rows.add(new Row(publishedId(each.causeEventId(), type, index), type, each.contractEvent()));
        }
        return rows;
    }

    private Set<UUID> toldAlready(List<Row> rows) {
        return new HashSet<>(jdbc.sql("SELECT event_id FROM outbox WHERE event_id = ANY (?)")
                .param(rows.stream().map(Row::id).toArray(UUID[]::new))
                .query(UUID.class)
                .list());
    }

    private void insert(List<Row> rows) {
        // The ordinality keeps the order of the feed; without it the order of the rows would be up to the planner.
        jdbc.sql("""
                INSERT INTO outbox (event_id, type, subject, happened_at, data)
                SELECT event_id, type, subject, happened_at, data::json
                FROM unnest(?::uuid[], ?::varchar[], ?::varchar[], ?::timestamptz[], ?::text[]) WITH ORDINALITY
                    AS told (event_id, type, subject, happened_at, data, row)
                ORDER BY row""")
                .params(
                        rows.stream().map(Row::id).toArray(UUID[]::new),
                        column(rows, Row::type),
                        column(rows, row -> PublishedName.subjectOf(row.event())),
                        column(
                                rows,
                                row -> PublishedName.happenedAt(row.event()).toString()),
                        column(rows, row -> ContractJson.write(row.event())))
                .update();
    }

    private static String[] column(List<Row> rows, Function<Row, String> value) {
        return rows.stream().map(value).toArray(String[]::new);
    }

    private record Row(UUID id, String type, Object event) {}

    private void ringAfterCommit() {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                bell.ring();
            }
        });
    }
}
