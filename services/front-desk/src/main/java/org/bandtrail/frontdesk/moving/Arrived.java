package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.PleaseConfirm;

/** What was measured and counted at the end of a transfer, read from the lines of its form. */
final class Arrived {
    private static final String NOTHING = "0+([.,]0+)?";

    private Arrived() {}

    /**
     * Asks about every line that says nothing, and about every line that says two things: nobody is charged with a
     * missing reel because a field was overlooked.
     *
     * @throws PleaseConfirm naming each line
     */
    static void askAboutSilence(Form form, List<Moved.Line> lines) {
        List<String> absent = form.filled("absent");
        List<Problem.Question> questions = new ArrayList<>();
        for (Moved.Line line : lines) {
            String found = found(form, line);
            boolean came = !found.isEmpty() && !found.matches(NOTHING);
            if (found.isEmpty() && !absent.contains(line.id())) {
                questions.add(
                        question(
                                line,
                                found,
                                line.reel()
                                        ? "%s was left empty. Write what you measured, or say that it did not come."
                                        : "%s was left empty. Write how many pieces you counted, or say that it did not come."));
            } else if (came && absent.contains(line.id())) {
                questions.add(question(line, found, "%s has a quantity and is ticked as not come. Take one away."));
            }
        }
        if (!questions.isEmpty()) {
            throw new PleaseConfirm(
                    "Did these come?",
                    "What did not come is missing with the person who carried it, so it is never taken from an empty"
                            + " field.",
                    questions);
        }
    }

    private static String found(Form form, Moved.Line line) {
        String key = line.reel() ? "reelId" : "batchId";
        String field = line.reel() ? "measured" : "counted";
        return form.lines(key, field).values().stream()
                .filter(parts -> line.id().equals(parts.get(key)))
                .map(parts -> parts.getOrDefault(field, ""))
                .findFirst()
                .orElse("");
    }

    private static Problem.Question question(Moved.Line line, String found, String words) {
        return new Problem.Question(line.id(), found, null, words.formatted(line.id()));
    }

    static List<Map<String, Object>> reels(Form form) {
        List<Map<String, Object>> reels = new ArrayList<>();
        form.lines("reelId", "measured", "measuredUnit").forEach((line, parts) -> {
            String measured = parts.getOrDefault("measured", "");
            if (came(measured)) {
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
            if (came(counted)) {
                batches.add(Map.of(
                        "batchId", parts.getOrDefault("batchId", ""), "counted", Form.whole("counted", counted)));
            }
        });
        return batches;
    }

    /** A line that is not named to supply-stock is one of which nothing came. */
    private static boolean came(String quantity) {
        return !quantity.isEmpty() && !quantity.matches(NOTHING);
    }
}
