package org.bandtrail.supplystock.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Place;

/**
 * What the field did with a reel or batch before its receipt was in the books, named by the receipt: places and
 * accounts give it up as unknown and take it as the item it is, and who used it pays.
 *
 * @param before what was where, by place
 * @param uses what accounts used
 */
record LateReceipt(Map<Place, Long> before, List<LateUse> uses) {

    static LateReceipt of(Stock stock, List<LateUse> uses) {
        Map<Place, Long> before = new TreeMap<>();
        stock.cells.forEach((place, cell) -> before.put(place, cell.quantity));
        stock.field.forEach((place, cell) -> before.put(place, cell.quantity));
        before.values().removeIf(quantity -> quantity == 0);
        return new LateReceipt(
                before, uses.stream().filter(use -> use.quantity() != 0).toList());
    }

    /** Millimetres or pieces that are owed to stock; negative if something was found before it was received. */
    long owed() {
        return -before.entrySet().stream()
                .filter(each -> each.getKey().kind().inStock())
                .mapToLong(Map.Entry::getValue)
                .sum();
    }

    /** The charges of a receipt, each over what its account used. */
    Map<LateUse, Long> sharesOf(List<Charge> charges) {
        Map<LateUse, Long> shares = noShares();
        for (Charge charge : charges) {
            List<LateUse> own = uses.stream()
                    .filter(use -> use.account().equals(charge.account()))
                    .toList();
            List<LateUse> users = own.stream().filter(use -> use.quantity() > 0).toList();
            share(
                    shares,
                    charge.minor(),
                    users.isEmpty() ? List.of(new LateUse(charge.account(), "", "", "", "received", 0)) : users);
        }
        return shares;
    }

    /** An amount over all that was used. */
    Map<LateUse, Long> sharesOf(long minor) {
        Map<LateUse, Long> shares = noShares();
        share(shares, minor, uses.stream().filter(use -> use.quantity() > 0).toList());
        return shares;
    }

    private Map<LateUse, Long> noShares() {
        Map<LateUse, Long> shares = new java.util.LinkedHashMap<>();
        uses.forEach(use -> shares.put(use, 0L));
        return shares;
    }

    private static void share(Map<LateUse, Long> shares, long minor, List<LateUse> users) {
        if (minor == 0) {
            return;
        }
        List<Long> weights =
                users.stream().map(use -> Math.max(1, use.quantity())).toList();
        List<Long> parts = LargestRemainder.split(minor, weights);
        for (int number = 0; number < users.size(); number++) {
            shares.merge(users.get(number), parts.get(number), Long::sum);
        }
    }

    /**
     * Writes the lines.
     *
     * @param into where the receipt came to
     * @param shares what each use pays
     */
    void post(Lines lines, Place into, Map<LateUse, Long> shares) {
        long paid = shares.values().stream().mapToLong(Long::longValue).sum();
        long owed = owed();
        long mark = 0;
        long given = 0;
        for (Map.Entry<Place, Long> each : before.entrySet()) {
            long part = 0;
            if (owed > 0 && each.getKey().kind().inStock()) {
                mark -= each.getValue();
                long upTo = Share.of(paid, mark, owed);
                part = upTo - given;
                given = upTo;
            }
            lines.named(each.getKey(), each.getValue(), part);
        }
        if (given != paid) {
            lines.named(into, 0, paid - given);
        }
        List<LateUse> order = new ArrayList<>(shares.keySet());
        order.forEach(use -> lines.named(use, shares.getOrDefault(use, 0L)));
    }
}
