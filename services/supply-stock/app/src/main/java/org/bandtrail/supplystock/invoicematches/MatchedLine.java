package org.bandtrail.supplystock.invoicematches;

import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * A line beside its order line: what was ordered, received and billed. Quantities are millimetres or pieces, null
 * without an order line.
 *
 * @param measure MILLIMETRES or PIECES
 * @param waiting received and not accepted yet
 * @param billedBefore by other invoices
 * @param billed by this line
 * @param expected this line by the order's price
 * @param carried what an approved line cost more than its receipts, carried to the goods; null before approval
 * @param verdict in words, for example {@code price differs}
 * @param acceptable whether a person may accept it with a reason
 * @param sentence what is wrong and what to do, or that nothing is
 */
public record MatchedLine(
        String line,
        @Nullable String purchaseId,
        @Nullable Integer purchaseLine,
        @Nullable String materialCode,
        @Nullable String measure,
        @Nullable Long ordered,
        @Nullable Long received,
        @Nullable Long waiting,
        @Nullable Long billedBefore,
        @Nullable Long billed,
        @Nullable Money expected,
        @Nullable Money carried,
        String verdict,
        boolean acceptable,
        String sentence) {

    /** A line that no order line is known for. */
    static MatchedLine alone(String line, String verdict, String sentence) {
        return new MatchedLine(
                line, null, null, null, null, null, null, null, null, null, null, null, verdict, false, sentence);
    }
}
