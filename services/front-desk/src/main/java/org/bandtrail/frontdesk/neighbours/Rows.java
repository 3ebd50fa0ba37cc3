package org.bandtrail.frontdesk.neighbours;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One page of a list.
 *
 * @param next where the next page begins, or null on the last page
 */
public record Rows<T>(List<T> rows, @Nullable String next) {

    /** A question with the place where the next page begins, null for the first. */
    public static Map<String, @Nullable Object> withAfter(Map<String, String> asked, @Nullable String after) {
        Map<String, @Nullable Object> page = new HashMap<>(asked);
        page.put("after", after);
        return page;
    }
}
