package org.bandtrail.eventstore;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.ObjectMapper;

/**
 * Remembers what was answered to which command id. The row is written first: a second copy of the request that arrives
 * while the first is at work waits for it on the primary key and then reads its answer.
 */
final class CommandReceipts {
    private final JdbcClient jdbc;
    private final ObjectMapper json;
    private final Clock clock;

    CommandReceipts(JdbcClient jdbc, ObjectMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
    }

    byte[] fingerprint(Object content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(json.writeValueAsBytes(content));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }

    <A> A once(UUID commandId, byte[] fingerprint, Class<A> type, Supplier<A> work) {
        int mine = jdbc.sql("""
                        INSERT INTO command_receipt (command_id, fingerprint, recorded_at) VALUES (?, ?, ?)
                        ON CONFLICT DO NOTHING""")
                .params(commandId, fingerprint, OffsetDateTime.now(clock).withOffsetSameInstant(ZoneOffset.UTC))
                .update();
        if (mine == 0) {
            return answered(commandId, fingerprint, type);
        }
        A answer = work.get();
        jdbc.sql("UPDATE command_receipt SET answer = ?::jsonb WHERE command_id = ?")
                .params(json.writeValueAsString(answer), commandId)
                .update();
        return answer;
    }

    private <A> A answered(UUID commandId, byte[] fingerprint, Class<A> type) {
        Receipt receipt = jdbc.sql("SELECT fingerprint, answer::text FROM command_receipt WHERE command_id = ?")
                .param(commandId)
                .query((row, number) -> new Receipt(row.getBytes(1), row.getString(2)))
                .single();
        if (!MessageDigest.isEqual(receipt.fingerprint(), fingerprint)) {
            throw new CommandReused(commandId);
        }
        if (receipt.answer() == null) {
            throw new IllegalStateException("Command id [%s] came twice inside one transaction.".formatted(commandId));
        }
        return json.readValue(receipt.answer(), type);
    }

    private record Receipt(byte[] fingerprint, @Nullable String answer) {}
}
