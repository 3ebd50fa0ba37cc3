package org.bandtrail.supplystock.spend;

import org.bandtrail.kernel.Money;

/**
 * received = in stock + charged + written off + written down, in one currency. Received is what came from suppliers, in
 * stock is what lies at places, the others are what accounts paid; each is summed on its own, so the difference is a
 * true check.
 *
 * @param received cost of what came from suppliers, with later changes of cost and without what went back
 * @param writtenOff cost of what is missing and was given up
 * @param differenceMinor received less the four others; not 0 means that a cent leaked
 */
public record SpendIdentity(
        Money received, Money inStock, Money charged, Money writtenOff, Money writtenDown, long differenceMinor) {
    static SpendIdentity of(
            String currency, long received, long inStock, long charged, long writtenOff, long writtenDown) {
        return new SpendIdentity(
                Money.of(received, currency),
                Money.of(inStock, currency),
                Money.of(charged, currency),
                Money.of(writtenOff, currency),
                Money.of(writtenDown, currency),
                received - inStock - charged - writtenOff - writtenDown);
    }
}
