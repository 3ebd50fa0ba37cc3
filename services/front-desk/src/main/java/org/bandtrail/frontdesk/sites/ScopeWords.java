package org.bandtrail.frontdesk.sites;

import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.field.Ground;

/** What a consent allows, in words. */
public final class ScopeWords {
    private ScopeWords() {}

    /** For example {@code bands and guards, traps against LYCMDE}. */
    public static String of(Ground.Scope scope) {
        String what = scope.activities().stream()
                .map(activity -> ConsentsController.ACTIVITIES.getOrDefault(activity, activity))
                .collect(Collectors.joining(", "));
        return scope.pests().isEmpty() ? what : what + " against " + String.join(", ", scope.pests());
    }
}
