package org.bandtrail.supplystock.countplans;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Puts items into value classes. Of each currency for itself the items are taken in the order of their value, the
 * dearest first (equal values by code). An item is class A while what stands before it makes up less than share A of the
 * whole, class B while that is less than share B, else class C; so the item that crosses a share still belongs to the
 * better class. Shares are per mille; the comparison {@code before * 1000 < share * whole} is exact. An item of no value
 * is class C.
 *
 * <p>Source: the split by value is named for V. Pareto; its use for stock and the shares 80, 15 and 5 % are common
 * practice, no source.
 */
public final class ValueClasses {
    private ValueClasses() {}

    /**
     * An item and what it is worth.
     *
     * @param valueMinor minor units of the currency, 0 or more
     */
    public record ItemValue(String material, String currency, long valueMinor) {
        public ItemValue {
            if (valueMinor < 0) {
                throw new IllegalArgumentException(
                        "Value [%d] of item [%s] is below zero. Give what it cost.".formatted(valueMinor, material));
            }
        }
    }

    /**
     * An item in its class.
     *
     * @param upToPermille share of all items up to and with this one, rounded down
     */
    public record Classified(ItemValue item, ValueClass valueClass, int upToPermille) {}

    /**
     * The items with their classes, by currency, the dearest first.
     *
     * @param shareA per mille, 1 to 1000
     * @param shareB per mille, share A's included
     */
    public static List<Classified> of(List<ItemValue> items, int shareA, int shareB) {
        if (shareA < 1 || shareB < shareA || shareB > 1000) {
            throw new IllegalArgumentException(
                    "Shares [%d, %d] are not in order from 1 to 1000.".formatted(shareA, shareB));
        }
        Map<String, List<ItemValue>> byCurrency =
                items.stream().collect(Collectors.groupingBy(ItemValue::currency, TreeMap::new, Collectors.toList()));
        List<Classified> classified = new ArrayList<>();
        byCurrency.values().forEach(each -> classified.addAll(ofOneCurrency(each, shareA, shareB)));
        return classified;
    }

    private static List<Classified> ofOneCurrency(List<ItemValue> items, int shareA, int shareB) {
        long whole = items.stream().mapToLong(ItemValue::valueMinor).sum();
        long before = 0;
        List<Classified> classified = new ArrayList<>();
        List<ItemValue> dearestFirst = items.stream()
                .sorted(Comparator.comparingLong(ItemValue::valueMinor)
                        .reversed()
                        .thenComparing(ItemValue::material))
                .toList();
        for (ItemValue item : dearestFirst) {
            ValueClass valueClass = item.valueMinor() == 0
                    ? ValueClass.C
                    : below(before, shareA, whole)
                            ? ValueClass.A
                            : below(before, shareB, whole) ? ValueClass.B : ValueClass.C;
            before += item.valueMinor();
            classified.add(new Classified(item, valueClass, permille(before, whole)));
        }
        return classified;
    }

    private static boolean below(long before, int share, long whole) {
        return thousand(before).compareTo(BigInteger.valueOf(share).multiply(BigInteger.valueOf(whole))) < 0;
    }

    private static int permille(long part, long whole) {
        return whole == 0
                ? 1000
                : thousand(part).divide(BigInteger.valueOf(whole)).intValueExact();
    }

    private static BigInteger thousand(long value) {
        return BigInteger.valueOf(value).multiply(BigInteger.valueOf(1000));
    }
}
