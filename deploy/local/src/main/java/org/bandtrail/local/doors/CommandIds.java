package org.bandtrail.local.doors;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.UUID;

/**
 * The identity of the command a row becomes: a UUID of version 7 (RFC 9562, section 5.7) whose time is the row's and
 * whose other bits are a digest of file and key instead of chance. The same row always gives the same identity, so
 * sending it again does nothing again.
 */
public final class CommandIds {
    private static final long VERSION_7 = 0x7000L;
    private static final long VARIANT = 0x8000_0000_0000_0000L;

    private CommandIds() {}

    /** The identity for this kind of row, its key within the kind, and the moment it tells of. */
    public static UUID of(String kind, String key, Instant moment) {
        ByteBuffer digest = ByteBuffer.wrap(sha256("bandtrail demo season/" + kind + "/" + key));
        long high = (moment.toEpochMilli() << 16) | VERSION_7 | (digest.getLong() & 0x0FFF);
        long low = (digest.getLong() & 0x3FFF_FFFF_FFFF_FFFFL) | VARIANT;
        return new UUID(high, low);
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("Every Java platform has SHA-256; this one says it has not.", missing);
        }
    }
}
