package org.bandtrail.eventstore;

import java.time.Clock;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.axonframework.common.DateTimeUtils;
import org.axonframework.eventhandling.GlobalSequenceTrackingToken;
import org.axonframework.eventhandling.TrackingToken;
import org.axonframework.serialization.SerializedObject;
import org.axonframework.serialization.Serializer;
import org.axonframework.serialization.SimpleSerializedObject;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The positions of many readers at once, in the token store's own rows: one statement where the token store takes two
 * for each reader. Only rows this replica has claimed already are seen; a claim is taken or taken over by the token
 * store alone.
 */
final class Claims {
    private final JdbcClient jdbc;
    private final Serializer serializer;
    private final String owner;
    private final Clock clock;

    /**
     * @param owner the node identity the token store was built with
     * @param clock the machine's time: claims lapse between machines, whatever day the house lives in
     */
    Claims(JdbcClient jdbc, Serializer serializer, String owner, Clock clock) {
        this.jdbc = jdbc;
        this.serializer = serializer;
        this.owner = owner;
        this.clock = clock;
    }

    /** Locks the claimed ones of these readers until the transaction ends, and tells where each stands. */
    Map<String, Long> lock(Collection<String> readers) {
        Map<String, Long> positions = new HashMap<>();
        jdbc.sql("""
                        SELECT processor_name, token, token_type FROM token_entry
                        WHERE processor_name = ANY (?) AND segment = 0 AND owner = ?
                        ORDER BY processor_name FOR UPDATE""").params(readers.toArray(String[]::new), owner).query(row -> {
            positions.put(row.getString(1), position(row.getBytes(2), row.getString(3)));
        });
        return positions;
    }

    /** Moves locked readers to a position and renews their claims. */
    void move(Collection<String> readers, long position) {
        SerializedObject<byte[]> token = serializer.serialize(new GlobalSequenceTrackingToken(position), byte[].class);
        jdbc.sql("""
                        UPDATE token_entry SET token = ?, token_type = ?, "timestamp" = ?
                        WHERE processor_name = ANY (?) AND segment = 0 AND owner = ?""")
                .params(
                        token.getData(),
                        token.getType().getName(),
                        DateTimeUtils.formatInstant(clock.instant()),
                        readers.toArray(String[]::new),
                        owner)
                .update();
    }

    private long position(byte[] data, String type) {
        TrackingToken token = serializer.deserialize(new SimpleSerializedObject<>(data, byte[].class, type, null));
        return Objects.requireNonNull(token).position().orElse(0);
    }
}
