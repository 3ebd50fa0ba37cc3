package org.bandtrail.testing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of texts, as {@code sha256sum} prints it for a file with Unix line ends. */
final class Digests {

    private Digests() {}

    /** Line ends are made Unix ones first, so that a checkout on another system has the same digest. */
    static String sha256(String text) {
        byte[] bytes = text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform must have SHA-256.", impossible);
        }
    }
}
