package org.bandtrail.eventstore;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.axonframework.messaging.unitofwork.CurrentUnitOfWork;
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
        Answers answers = answers();
        if (!answers.isMine(commandId) && !insert(new UUID[] {commandId}, new byte[][] {fingerprint}, answers)) {
            return answered(commandId, fingerprint, type, answers);
        }
        A answer = unlessRefused(commandId, answers, work);
        answers.add(commandId, json.writeValueAsString(answer));
        return answer;
    }

    /** A refused wish leaves its id free, also when the rest of a delivery goes on. */
    private <A> A unlessRefused(UUID commandId, Answers answers, Supplier<A> work) {
        try {
            return work.get();
        } catch (Refusal refused) {
            answers.mine.remove(commandId);
            jdbc.sql("DELETE FROM command_receipt WHERE command_id = ?")
                    .param(commandId)
                    .update();
            throw refused;
        }
    }

    /** Writes these ids down with one statement. */
    void claim(List<Work.Stamp> stamps) {
        Map<UUID, byte[]> fingerprints = new LinkedHashMap<>();
        // The first of two equal ids counts; the second one finds it when its turn comes.
        stamps.forEach(stamp -> fingerprints.putIfAbsent(stamp.commandId(), fingerprint(stamp.content())));
        insert(fingerprints.keySet().toArray(UUID[]::new), fingerprints.values().toArray(byte[][]::new), answers());
    }

    /** Whether at least one of the ids was new. In the order of the ids, so that two deliveries never wait in a ring. */
    private boolean insert(UUID[] ids, byte[][] fingerprints, Answers answers) {
        List<UUID> mine = jdbc.sql("""
                        INSERT INTO command_receipt (command_id, fingerprint, recorded_at)
                        SELECT id, fingerprint, ? FROM unnest(?::uuid[], ?::bytea[]) AS claimed (id, fingerprint)
                        ORDER BY id ON CONFLICT DO NOTHING RETURNING command_id""")
                .params(OffsetDateTime.now(clock).withOffsetSameInstant(ZoneOffset.UTC), ids, fingerprints)
                .query(UUID.class)
                .list();
        answers.mine(mine);
        return !mine.isEmpty();
    }

    private Answers answers() {
        return CurrentUnitOfWork.get().root().getOrComputeResource(Answers.class.getName(), unused -> {
            Answers answers = new Answers(jdbc);
            CurrentUnitOfWork.get().root().onPrepareCommit(unit -> answers.write());
            return answers;
        });
    }

    private <A> A answered(UUID commandId, byte[] fingerprint, Class<A> type, Answers answers) {
        Receipt receipt = jdbc.sql("SELECT fingerprint, answer::text FROM command_receipt WHERE command_id = ?")
                .param(commandId)
                .query((row, number) -> new Receipt(row.getBytes(1), row.getString(2)))
                .single();
        if (!MessageDigest.isEqual(receipt.fingerprint(), fingerprint)) {
            throw new CommandReused(commandId);
        }
        String answer = answers.given.getOrDefault(commandId, receipt.answer());
        if (answer == null) {
            throw new IllegalStateException("Command id [%s] came twice inside one transaction.".formatted(commandId));
        }
        return json.readValue(answer, type);
    }

    private record Receipt(byte[] fingerprint, @Nullable String answer) {}

    /** What one transaction has answered so far; written with one statement when it commits. */
    private static final class Answers {
        private final JdbcClient jdbc;
        private final Set<UUID> mine = new HashSet<>();
        private final Map<UUID, String> given = new LinkedHashMap<>();

        Answers(JdbcClient jdbc) {
            this.jdbc = jdbc;
        }

        void mine(List<UUID> ids) {
            mine.addAll(ids);
        }

        /** Whether this transaction wrote the id down and has not answered it yet. */
        boolean isMine(UUID id) {
            return mine.contains(id) && !given.containsKey(id);
        }

        void add(UUID id, String answer) {
            given.put(id, answer);
        }

        void write() {
            jdbc.sql("""
                            UPDATE command_receipt r SET answer = given.answer::jsonb
                            FROM unnest(?::uuid[], ?::text[]) AS given (id, answer) WHERE r.command_id = given.id""")
                    .params(given.keySet().toArray(UUID[]::new), given.values().toArray(String[]::new))
                    .update();
        }
    }
}
