package org.bandtrail.supplystock.ledger;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bandtrail.supplystock.costs.LargestRemainder;

/** Who used pieces of a pool, and what they paid for them so far. */
final class Payers {
    private static final Paid NOTHING = new Paid(0, 0);
    private final SortedMap<String, Paid> all = new TreeMap<>();

    /** What an account used, in pieces, and paid, in minor units. */
    record Paid(long quantity, long minor) {}

    Map<String, Paid> all() {
        return Map.copyOf(all);
    }

    Paid of(String account) {
        return all.getOrDefault(account, NOTHING);
    }

    void pays(String account, long pieces, long minor) {
        Paid before = of(account);
        all.put(account, new Paid(before.quantity() + pieces, before.minor() + minor));
    }

    /** An amount over all accounts by the pieces they used; empty if none used any. */
    Map<String, Long> share(long minor) {
        Map<String, Long> shares = new TreeMap<>();
        List<String> users = all.keySet().stream()
                .filter(account -> of(account).quantity() > 0)
                .toList();
        if (minor == 0 || users.isEmpty()) {
            return shares;
        }
        List<Long> parts = LargestRemainder.split(
                minor, users.stream().map(account -> of(account).quantity()).toList());
        for (int number = 0; number < users.size(); number++) {
            shares.put(users.get(number), parts.get(number));
        }
        return shares;
    }
}
