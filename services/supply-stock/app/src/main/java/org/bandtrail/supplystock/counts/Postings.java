package org.bandtrail.supplystock.counts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;

/**
 * Turns the differences of a count into postings. What lacks in one bin and is too much in another only lay in the
 * wrong bin; what was found here and is with a person in the books was brought back; only the rest is written off or
 * found. So a misplaced reel neither loses its cost nor appears twice.
 */
final class Postings {
    private final List<Posting> postings = new ArrayList<>();
    private final Map<SheetLine.Key, Long> open = new LinkedHashMap<>();

    private Postings() {}

    /**
     * The postings, in an order in which they can be done.
     *
     * @param lines lines with their figures and reasons
     */
    static List<Posting> of(List<CountLine> lines) {
        Postings postings = new Postings();
        lines.forEach(line -> postings.open.put(line.sheet().key(), line.difference()));
        for (CountLine line : lines) {
            if (line.difference() > 0) {
                postings.fromOtherLines(line, lines);
                postings.fromElsewhere(line);
            }
        }
        lines.forEach(postings::adjust);
        return postings.postings;
    }

    private void fromOtherLines(CountLine more, List<CountLine> lines) {
        for (CountLine less : lines) {
            boolean same = less.sheet().id().equals(more.sheet().id())
                    && less.sheet().holding().equals(more.sheet().holding());
            long quantity = Math.min(left(more), -left(less));
            if (same && quantity > 0) {
                post(Posting.How.PUT_IN_BIN, more, less.sheet().place(), quantity);
                open.merge(less.sheet().key(), quantity, Long::sum);
                open.merge(more.sheet().key(), -quantity, Long::sum);
            }
        }
    }

    private void fromElsewhere(CountLine found) {
        Place elsewhere = found.sheet().elsewhere();
        if (elsewhere == null || left(found) <= 0) {
            return;
        }
        if (elsewhere.kind() == PlaceKind.CREW) {
            post(Posting.How.BROUGHT_BACK, found, elsewhere, left(found));
            open.put(found.sheet().key(), 0L);
        } else if (elsewhere.kind() == PlaceKind.DEPOT
                && Objects.equals(elsewhere.depotId(), found.sheet().place().depotId())
                && open.keySet().stream()
                        .noneMatch(key -> key.place().equals(elsewhere)
                                && key.id().equals(found.sheet().id()))) {
            long quantity = Math.min(left(found), found.sheet().quantityElsewhere());
            post(Posting.How.PUT_IN_BIN, found, elsewhere, quantity);
            open.merge(found.sheet().key(), -quantity, Long::sum);
        }
    }

    private void adjust(CountLine line) {
        if (left(line) != 0) {
            post(Posting.How.ADJUSTED, line, null, left(line));
        }
    }

    private long left(CountLine line) {
        return open.getOrDefault(line.sheet().key(), 0L);
    }

    private void post(Posting.How how, CountLine line, @org.jspecify.annotations.Nullable Place source, long quantity) {
        String reason = line.reason();
        postings.add(new Posting(
                how,
                line.sheet().holding(),
                line.sheet().id(),
                source,
                line.sheet().place(),
                quantity,
                reason == null ? "" : reason));
    }
}
