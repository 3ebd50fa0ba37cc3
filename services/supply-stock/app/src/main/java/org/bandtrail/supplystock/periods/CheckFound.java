package org.bandtrail.supplystock.periods;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What one check of a close found.
 *
 * @param check its name for ever, for example {@code open-discrepancies}
 * @param open how many things are open; 0 is clean
 * @param sentence what was found, for a person
 * @param fingerprint of the open things: a signature holds for exactly these and no others
 */
public record CheckFound(String check, long open, String sentence, String fingerprint) {
    /** Refuses a count below zero, which no check can find. */
    public CheckFound {
        if (open < 0) {
            throw new IllegalArgumentException(
                    "Check [%s] found [%d] things; it cannot be below 0.".formatted(check, open));
        }
    }

    /**
     * What a check found, by the names of what is open.
     *
     * @param open one text for each open thing, the same as long as it is the same thing in the same amount
     * @param clean what to say if nothing is open
     * @param count what to say else, with a %d for how many
     */
    public static CheckFound of(String check, List<String> open, String clean, String count) {
        return open.isEmpty()
                ? new CheckFound(check, 0, clean, "")
                : new CheckFound(check, open.size(), count.formatted(open.size()), fingerprint(open));
    }

    private static String fingerprint(List<String> open) {
        String all = open.stream().sorted().collect(Collectors.joining("\n"));
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256.", impossible);
        }
    }

    /** Nothing is open. */
    public boolean clean() {
        return open == 0;
    }
}
