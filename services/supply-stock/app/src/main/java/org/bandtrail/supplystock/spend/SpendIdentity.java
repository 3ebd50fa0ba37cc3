package org.bandtrail.supplystock.spend;

import org.bandtrail.kernel.Money;

/**
 * received = in stock + charged + written off, in one currency. In stock is worked out from the moves (cost of what has
 * not left stock), the others from receipts and charges, so the difference is a true check.
 *
 * @param differenceMinor received less the three others; not 0 means that a cent leaked
 */
public record SpendIdentity(Money received, Money inStock, Money charged, Money writtenOff, long differenceMinor) {
    static SpendIdentity of(String currency, long received, long inStock, long charged, long writtenOff) {
        return new SpendIdentity(
                Money.of(received, currency),
                Money.of(inStock, currency),
                Money.of(charged, currency),
                Money.of(writtenOff, currency),
                received - inStock - charged - writtenOff);
    }
}
