package org.bandtrail.frontdesk.sites;

import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.field.Ground;

/** What a consent allows, in words. */
public final class ScopeWords {
    private ScopeWords() {}

    /**
     * For example {@code bands and guards, traps against Spotted lanternfly}.
     *
     * @param pests the names of pests by code; a code without a name stands for itself
     */
    public static String of(Ground.Scope scope, Map<String, String> pests) {
        String what = scope.activities().stream()
                .map(activity -> ConsentsController.ACTIVITIES.getOrDefault(activity, activity))
                .collect(Collectors.joining(", "));
        return scope.pests().isEmpty()
                ? what
                : what + " against "
                        + scope.pests().stream()
                                .map(code -> pests.getOrDefault(code, code))
                                .collect(Collectors.joining(", "));
    }
}
