package org.bandtrail.supplystock.holds;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.regex.Pattern;
import org.bandtrail.kernel.BatchId;
import org.bandtrail.kernel.ReelId;

/** What is held: a reel or a batch, written {@code reel:R-0001} or {@code batch:B-0001}. */
public record HeldId(@JsonValue String value) {
    private static final Pattern SPELLING = Pattern.compile("(reel|batch):[A-Z0-9][A-Z0-9-]{0,39}");

    /** Refuses, by name, what is neither. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public HeldId {
        if (!SPELLING.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    "[%s] is neither a reel nor a batch. Write reel:R-0001 or batch:B-0001.".formatted(value));
        }
    }

    /** A reel, which is held whole. */
    public static HeldId reel(ReelId reel) {
        return new HeldId("reel:" + reel);
    }

    /** A batch, of which some pieces are held. */
    public static HeldId batch(BatchId batch) {
        return new HeldId("batch:" + batch);
    }

    /** Whether it can only be held whole. */
    public boolean whole() {
        return value.startsWith("reel:");
    }

    /** The identity of the reel or batch alone. */
    public String id() {
        return value.substring(value.indexOf(':') + 1);
    }

    /** In words, for messages. */
    String inWords() {
        return (whole() ? "Reel [" : "Batch [") + id() + "]";
    }

    @Override
    public String toString() {
        return value;
    }
}
