package org.bandtrail.frontdesk.moving;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.PleaseConfirm;

/**
 * A scanned label: of a reel, which goes whole, or of a batch of fasteners, of which somebody has to say how much goes.
 *
 * @param id as on the label
 * @param batch whether it is a batch
 */
record Label(String id, boolean batch) {
    static final String ALL = "all";
    private static final int UNKNOWN = 404;

    /**
     * What the label in a form is. One that the books do not know passes as a reel, and supply-stock says so.
     *
     * @param there the places of which all would be taken, text form
     * @throws PleaseConfirm if it is a batch and nothing says how many pieces go
     */
    static Label read(Form form, SupplyStock stock, Predicate<String> there, Desk desk) {
        String id = form.identity("label");
        if (form.has("pieces")) {
            return new Label(id, true);
        }
        Optional<Stock.WholeBatch> batch = batch(id, stock);
        if (batch.isPresent() && !form.text("take").equals(ALL)) {
            throw asked(batch.get(), there, desk);
        }
        return new Label(id, batch.isPresent());
    }

    /** The body of a command with this label in it. */
    Map<String, Object> into(Form.Body body) {
        return body.put(batch ? "batchId" : "reelId", id).whole("pieces").done();
    }

    /** What went, in words: a reel by its label, a batch with its pieces. */
    String moved(long quantity, Desk desk) {
        return batch ? desk.figures().pieces(quantity) + " of " + id : id;
    }

    /** The batch with this label, or empty if the books know none. */
    static Optional<Stock.WholeBatch> batch(String id, SupplyStock stock) {
        if (id.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(stock.batch(id));
        } catch (NeighbourRefused refused) {
            if (refused.status() == UNKNOWN) {
                return Optional.empty();
            }
            throw refused;
        }
    }

    private static PleaseConfirm asked(Stock.WholeBatch batch, Predicate<String> there, Desk desk) {
        String id = batch.balance().batchId();
        return new PleaseConfirm(
                "How many pieces?",
                "%s is a batch of fasteners, not a reel. Write how many pieces, or take all that is there."
                        .formatted(id),
                List.of(new Problem.Question("pieces", "", null, "The books have " + lies(batch, there, desk))));
    }

    /** How much of a batch lies at these places, in words. */
    static String lies(Stock.WholeBatch batch, Predicate<String> there, Desk desk) {
        // Supply-stock takes them from the place that has most; the sentence says the same place.
        return batch.places().stream()
                .filter(each -> each.quantity() > 0 && there.test(each.place()))
                .max(Comparator.comparingLong(Stock.PlaceBalance::quantity))
                .map(each -> desk.figures().pieces(each.quantity()) + " of it, " + desk.place(each.place()) + ".")
                .orElse("none of it there.");
    }
}
