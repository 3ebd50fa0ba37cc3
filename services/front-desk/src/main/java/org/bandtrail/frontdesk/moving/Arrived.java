package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.pages.Form;

/** What was measured and counted at the end of a transfer, read from the lines of its form. */
final class Arrived {
    private Arrived() {}

    static List<Map<String, Object>> reels(Form form) {
        List<Map<String, Object>> reels = new ArrayList<>();
        form.lines("reelId", "measured", "measuredUnit").forEach((line, parts) -> {
            String measured = parts.getOrDefault("measured", "");
            if (!measured.isEmpty()) {
                reels.add(Map.of(
                        "reelId",
                        parts.getOrDefault("reelId", ""),
                        "measured",
                        Form.withUnit(measured, parts.getOrDefault("measuredUnit", ""))));
            }
        });
        return reels;
    }

    static List<Map<String, Object>> batches(Form form) {
        List<Map<String, Object>> batches = new ArrayList<>();
        form.lines("batchId", "counted").forEach((line, parts) -> {
            String counted = parts.getOrDefault("counted", "");
            if (!counted.isEmpty()) {
                batches.add(Map.of(
                        "batchId", parts.getOrDefault("batchId", ""), "counted", Form.whole("counted", counted)));
            }
        });
        return batches;
    }
}
