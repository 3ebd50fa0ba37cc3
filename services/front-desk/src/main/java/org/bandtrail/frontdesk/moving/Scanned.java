package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bandtrail.frontdesk.pages.Form;

/**
 * Labels as a hand scanner writes them: one number a line; pieces of a batch as {@code F-001=120}.
 *
 * @param reels numbers of reels
 * @param batches batches with pieces, as bodies of a request
 */
record Scanned(List<String> reels, List<Map<String, Object>> batches) {

    static Scanned read(String text) {
        List<String> reels = new ArrayList<>();
        List<Map<String, Object>> batches = new ArrayList<>();
        Arrays.stream(text.split("[\\s,;]+")).filter(each -> !each.isBlank()).forEach(each -> {
            String[] parts = each.toUpperCase(Locale.ROOT).split("=", 2);
            if (parts.length == 1) {
                reels.add(parts[0]);
            } else {
                batches.add(Map.of("batchId", parts[0], "pieces", Form.whole("pieces of " + parts[0], parts[1])));
            }
        });
        return new Scanned(reels, batches);
    }
}
