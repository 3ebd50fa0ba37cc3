package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.PleaseConfirm;

/**
 * Labels as a hand scanner writes them: one number a line; pieces of a batch as {@code F-001=120}. A bare label of a batch
 * is never taken for a reel: somebody has to say how much of it goes.
 *
 * @param reels numbers of reels
 * @param batches batches with pieces, as bodies of a request; without pieces all that is there
 */
record Scanned(List<String> reels, List<Map<String, Object>> batches) {
    private static final String BATCH = "batchId";

    /**
     * What the labels in a form are.
     *
     * @param from the place they leave, text form
     * @throws PleaseConfirm naming each batch of which nothing says how many pieces go
     */
    static Scanned read(Form form, SupplyStock stock, String from, Desk desk) {
        boolean all = form.text("take").equals(Label.ALL);
        List<String> reels = new ArrayList<>();
        List<Map<String, Object>> batches = new ArrayList<>();
        List<Problem.Question> questions = new ArrayList<>();
        for (String[] parts : labels(form.text("labels"))) {
            if (parts.length > 1) {
                batches.add(Map.of(BATCH, parts[0], "pieces", Form.whole("pieces of " + parts[0], parts[1])));
                continue;
            }
            Optional<Stock.WholeBatch> batch = Label.batch(parts[0], stock);
            if (batch.isEmpty()) {
                reels.add(parts[0]);
            } else if (all) {
                batches.add(Map.of(BATCH, parts[0]));
            } else {
                questions.add(question(batch.get(), from, desk));
            }
        }
        if (!questions.isEmpty()) {
            throw new PleaseConfirm(
                    "How many pieces?",
                    "These are batches of fasteners, not reels. Write the pieces behind the label, such as F-001=120, or"
                            + " take all that is there.",
                    questions);
        }
        return new Scanned(reels, batches);
    }

    private static List<String[]> labels(String text) {
        return Arrays.stream(text.split("[\\s,;]+"))
                .filter(each -> !each.isBlank())
                .map(each -> each.toUpperCase(Locale.ROOT).split("=", 2))
                .toList();
    }

    private static Problem.Question question(Stock.WholeBatch batch, String from, Desk desk) {
        String id = batch.balance().batchId();
        String lies = Label.lies(batch, place -> place.equals(from) || place.startsWith(from + "/"), desk);
        return new Problem.Question("labels", id, null, id + ": the books have " + lies);
    }

    /** A body of a command with these in it. */
    Form.Body into(Form.Body body) {
        return body.put("reels", reels).put("batches", batches);
    }

    /** The labels of the batches. */
    List<String> batchIds() {
        return batches.stream().map(batch -> String.valueOf(batch.get(BATCH))).toList();
    }
}
