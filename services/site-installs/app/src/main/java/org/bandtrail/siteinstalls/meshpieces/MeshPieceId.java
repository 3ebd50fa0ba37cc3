package org.bandtrail.siteinstalls.meshpieces;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import org.bandtrail.kernel.Identity;
import org.bandtrail.kernel.ReelId;

/**
 * Identity of a piece of mesh: written on its tag, or made when it came back untagged.
 *
 * @param value 1 to 40 letters, digits and dashes
 */
public record MeshPieceId(@JsonValue String value) {
    private static final int BYTES = 5;

    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public MeshPieceId {
        value = Identity.checked("mesh piece", value);
    }

    /**
     * The identity of a piece that came back untagged: the same for the same work and reel, so that a message heard
     * twice makes one piece. 40 bits: among 10,000 pieces two are alike with a chance of 1 in 20,000.
     *
     * @param work the teardown or visit that brought it back
     */
    public static MeshPieceId made(String work, ReelId reel) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest((work + "/" + reel).getBytes(StandardCharsets.UTF_8));
            return new MeshPieceId(
                    "MP-" + HexFormat.of().formatHex(digest, 0, BYTES).toUpperCase(Locale.ROOT));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }

    @Override
    public String toString() {
        return value;
    }
}
