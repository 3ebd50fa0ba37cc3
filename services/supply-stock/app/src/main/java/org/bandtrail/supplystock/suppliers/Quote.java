package org.bandtrail.supplystock.suppliers;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * What a supplier quoted for one item.
 *
 * @param packing order unit and what is in one
 * @param packUnits only multiples of so many order units are sold, 1 or more
 * @param minimumUnits fewer order units are not sold, 1 or more
 * @param leadTimeDays promised days from order to delivery, 0 to 730
 * @param breaks prices by quantity, the smallest first
 * @param currency ISO 4217 code of all prices
 * @param validFrom first day the quote holds
 * @param validUntil last day, null until further notice
 * @param reference the supplier's own number, may be empty
 */
public record Quote(
        MaterialCode material,
        MaterialKind kind,
        Packing packing,
        long packUnits,
        long minimumUnits,
        int leadTimeDays,
        List<PriceBreak> breaks,
        String currency,
        LocalDate validFrom,
        @Nullable LocalDate validUntil,
        String reference) {
    private static final int LONGEST_LEAD_TIME_DAYS = 730;

    /**
     * What is wrong with the quote.
     *
     * @return a sentence naming the value and what to do, or null if nothing is wrong
     */
    public @Nullable String fault() {
        if (packUnits < 1 || minimumUnits < 1) {
            return "The pack size [%d] and the minimum order [%d] must be 1 or more."
                    .formatted(packUnits, minimumUnits);
        }
        if (leadTimeDays < 0 || leadTimeDays > LONGEST_LEAD_TIME_DAYS) {
            return "The lead time [%d days] must be from 0 to %d.".formatted(leadTimeDays, LONGEST_LEAD_TIME_DAYS);
        }
        if (validUntil != null && validUntil.isBefore(validFrom)) {
            return "The quote ends on [%s], before it begins on [%s].".formatted(validUntil, validFrom);
        }
        if (breaks.isEmpty()) {
            return "The quote has no price. Give at least the price of the smallest quantity.";
        }
        if (Money.zero(currency).minorDigits() < 0) {
            return "Nothing is priced in [%s].".formatted(currency);
        }
        return faultOfBreaks();
    }

    private @Nullable String faultOfBreaks() {
        if (breaks.getFirst().fromUnits() > minimumUnits) {
            return "The first price holds from [%d], but [%d] may be ordered. Give the price of the smallest order."
                    .formatted(breaks.getFirst().fromUnits(), minimumUnits);
        }
        long before = 0;
        for (PriceBreak each : breaks) {
            if (each.fromUnits() <= before) {
                return "Prices must be in order of quantity; [%d] comes after [%d]."
                        .formatted(each.fromUnits(), before);
            }
            if (each.unitPrice() <= 0) {
                return "The price from [%d] is [%s]. A price is above zero."
                        .formatted(each.fromUnits(), Money.of(each.unitPrice(), currency));
            }
            before = each.fromUnits();
        }
        return null;
    }

    /** Tells whether the quote holds on this day. */
    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(validFrom) && (validUntil == null || !day.isAfter(validUntil));
    }

    /**
     * The price of one order unit if so many are ordered on this day: that of the last break reached.
     *
     * @throws SupplierRefused if the quantity is not sold or the quote does not hold
     */
    public Money unitPrice(SupplierId supplier, long units, LocalDate day) {
        if (!holdsOn(day)) {
            throw new SupplierRefused.QuoteNotValid(supplier, this, day);
        }
        if (units < minimumUnits) {
            throw new SupplierRefused.BelowMinimumOrder(supplier, this, units);
        }
        if (units % packUnits != 0) {
            throw new SupplierRefused.NotWholePacks(supplier, this, units);
        }
        long price = 0;
        for (PriceBreak each : breaks) {
            if (each.fromUnits() <= units) {
                price = each.unitPrice();
            }
        }
        return Money.of(price, currency);
    }

    /** The smallest quantity that is sold and covers this one: at least the minimum, in whole packs. */
    public long orderable(long units) {
        long least = Math.max(units, minimumUnits);
        return Math.multiplyExact(Math.ceilDiv(least, packUnits), packUnits);
    }
}
