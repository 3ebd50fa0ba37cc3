package org.bandtrail.frontdesk.neighbours;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A refusal in the form of RFC 9457, as a service sent it.
 *
 * @param type for example {@code /problems/reel-too-short}
 * @param questions what the person is asked to confirm; empty unless the type says please-confirm
 */
public record Problem(
        @Nullable String type,
        @Nullable String title,
        @Nullable Integer status,
        @Nullable String detail,
        @Nullable List<Question> questions) {

    /**
     * Something entered that is probably a slip.
     *
     * @param perhaps what may have been meant, or null
     */
    public record Question(
            @Nullable String field,
            @Nullable String value,
            @Nullable String perhaps,
            @Nullable String message) {}

    /** Tells whether the service only wants the values confirmed. */
    public boolean asksToConfirm() {
        return type != null && type.endsWith("please-confirm");
    }

    /** What went wrong, in one line. */
    public String headline() {
        return title == null || title.isBlank() ? "This was not done" : title;
    }
}
