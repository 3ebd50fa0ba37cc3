package org.bandtrail.frontdesk.bands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.money.Spending;
import org.bandtrail.kernel.Money;

/**
 * What the material on one tree cost so far.
 *
 * @param totals one for each currency
 * @param lines how many charges make them up
 */
record TreeCost(List<Money> totals, int lines) {
    /** Keeps its own copy. */
    TreeCost {
        totals = List.copyOf(totals);
    }

    /** Adds charges up; mesh that came back into use counts with its negative charge. */
    static TreeCost of(List<Spending.Line> lines) {
        Map<String, Long> minor = new LinkedHashMap<>();
        lines.forEach(line -> minor.merge(line.currency(), line.minor(), Math::addExact));
        return new TreeCost(
                minor.entrySet().stream()
                        .map(sum -> Money.of(sum.getValue(), sum.getKey()))
                        .toList(),
                lines.size());
    }

    /** Whether nothing was charged yet. */
    public boolean nothing() {
        return lines == 0;
    }
}
