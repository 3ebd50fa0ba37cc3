package org.bandtrail.supplystock.audits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The laws of the books. One side of each comes from the single moves and charges, the other from the balances, so a
 * mistake in either would show. Pure: it is the same for sums that are kept and for sums that are counted.
 */
final class Laws {
    private static final Map<String, String> NAMES =
            Map.of("TAPE", "Tape", "MESH", "Mesh", "FASTENER", "Fasteners", "UNKNOWN", "Reels without a receipt");
    private static final String EVERYTHING =
            "received = set aside + in depots + on the way + in vehicles + with crews + on trees + in waste bags"
                    + " + disposed + slit + missing + written off";
    private static final Map<String, String> PAYS = new TreeMap<>(Map.of(
            "site", "charged to sites",
            "written-off", "written off",
            "written-down", "written down",
            "slit", "slit, on its way between reels"));

    private Laws() {}

    /** All laws over these sums. */
    static List<Law> of(BookSums reels, BookSums batches) {
        List<Law> laws = new ArrayList<>();
        laws.addAll(ofQuantity(reels, "mm"));
        laws.addAll(ofQuantity(batches, "pieces"));
        laws.addAll(ofMoney(reels, batches));
        return laws;
    }

    private static List<Law> ofQuantity(BookSums sums, String unit) {
        List<Law> laws = new ArrayList<>();
        sums.there().forEach((kind, there) -> {
            String name = NAMES.getOrDefault(kind, kind);
            long everywhere =
                    there.values().stream().mapToLong(Long::longValue).sum() - there.getOrDefault("received", 0L);
            long received = sums.outOf(kind, "supplier") - sums.into(kind, "supplier");
            laws.add(new Law(name + ": everything", EVERYTHING, received, everywhere, unit));
            for (Station station : Station.values()) {
                laws.add(new Law(
                        name + ": " + station.words(),
                        station.statement(),
                        sums.into(kind, station.place()),
                        sums.outOf(kind, station.place()) + there.getOrDefault(station.place(), 0L),
                        unit));
            }
        });
        return laws;
    }

    private static List<Law> ofMoney(BookSums reels, BookSums batches) {
        List<Law> laws = new ArrayList<>();
        TreeSet<String> currencies = new TreeSet<>(reels.money().keySet());
        currencies.addAll(batches.money().keySet());
        for (String currency : currencies) {
            long cost = both(reels.money(), batches.money(), currency, "cost");
            long inStock = cost;
            long paid = 0;
            List<Law> accounts = new ArrayList<>();
            for (Map.Entry<String, String> account : PAYS.entrySet()) {
                long balance = both(reels.money(), batches.money(), currency, account.getKey());
                long charges = both(reels.paid(), batches.paid(), currency, account.getKey());
                inStock -= balance;
                paid += charges;
                accounts.add(new Law(
                        "Money in %s: %s".formatted(currency, account.getValue()),
                        "all single charges to it = what the balances say",
                        charges,
                        balance,
                        currency + " minor units"));
            }
            laws.add(new Law(
                    "Money in " + currency,
                    "cost of all reels and batches = still in stock + charged to sites + written off or down + slit",
                    cost,
                    inStock + paid,
                    currency + " minor units"));
            laws.addAll(accounts);
        }
        return laws;
    }

    private static long both(
            Map<String, Map<String, Long>> one, Map<String, Map<String, Long>> other, String currency, String account) {
        return one.getOrDefault(currency, Map.of()).getOrDefault(account, 0L)
                + other.getOrDefault(currency, Map.of()).getOrDefault(account, 0L);
    }
}
