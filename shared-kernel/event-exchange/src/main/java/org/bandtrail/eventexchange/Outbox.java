package org.bandtrail.eventexchange;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Types;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
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
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException(
                    "Outbox.append needs the transaction of the private event [%s]. Maybe the caller has none."
                            .formatted(causeEventId));
        }
        for (int index = 0; index < contractEvents.size(); index++) {
            insert(causeEventId, index, contractEvents.get(index));
        }
        ringAfterCommit();
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

    private void insert(UUID causeEventId, int index, Object contractEvent) {
        String type = PublishedName.of(contractEvent.getClass());
        jdbc.sql("""
                INSERT INTO outbox (event_id, type, subject, happened_at, data)
                VALUES (:id, :type, :subject, :happenedAt, CAST(:data AS json))
                """)
                .param("id", publishedId(causeEventId, type, index))
                .param("type", type)
                .param("subject", PublishedName.subjectOf(contractEvent))
                .param(
                        "happenedAt",
                        PublishedName.happenedAt(contractEvent).atOffset(ZoneOffset.UTC),
                        Types.TIMESTAMP_WITH_TIMEZONE)
                .param("data", ContractJson.write(contractEvent))
                .update();
    }

    private void ringAfterCommit() {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                bell.ring();
            }
        });
    }
}
