package org.bandtrail.siteinstalls.photos;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import org.bandtrail.kernel.Identity;

/**
 * Identity of a stored picture, made of its content: the same picture has one identity however often it comes in.
 *
 * @param value PH- and the first 32 hexadecimal digits of the SHA-256 of the stored JPEG
 */
public record PhotoId(@JsonValue String value) {
    private static final int BYTES = 16;

    /** Accepts small letters and surrounding blanks; refuses, by name, what is no identity. */
    @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
    public PhotoId {
        value = Identity.checked("photo", value);
    }

    /** The identity of these bytes. */
    static PhotoId of(byte[] jpeg) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(jpeg);
            return new PhotoId(
                    "PH-" + HexFormat.of().formatHex(digest, 0, BYTES).toUpperCase(Locale.ROOT));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256", impossible);
        }
    }

    @Override
    public String toString() {
        return value;
    }
}
