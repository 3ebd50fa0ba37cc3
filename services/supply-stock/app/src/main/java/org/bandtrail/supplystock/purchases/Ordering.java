package org.bandtrail.supplystock.purchases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.MaterialCode;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.items.Items;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.bandtrail.supplystock.suppliers.Packing;
import org.bandtrail.supplystock.suppliers.Quote;
import org.bandtrail.supplystock.suppliers.SupplierId;
import org.bandtrail.supplystock.suppliers.Suppliers;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Turns what somebody wants to order into priced lines, by the supplier's quotes. */
@Component
class Ordering {
    private final Items items;
    private final Suppliers suppliers;

    Ordering(Items items, Suppliers suppliers) {
        this.items = items;
        this.suppliers = suppliers;
    }

    /**
     * What somebody wants: by a quote, or by hand with unit, contents and price.
     *
     * @param quote number of the supplier's quote, null if given by hand
     * @param unitCode Recommendation 20 code, only without a quote
     * @param packageCode Recommendation 21 code, only without a quote
     * @param content of one unit, for example {@code 55 yd}; only without a quote
     * @param unitPrice of one order unit; with a quote null, or a price agreed that day instead of the quoted one
     */
    record Wanted(
            @Nullable MaterialCode materialCode,
            long units,
            @Nullable Integer quote,
            @Nullable String unitCode,
            @Nullable String packageCode,
            @Nullable String content,
            @Nullable Money unitPrice,
            @Nullable SiteId siteId,
            @Nullable String grant) {}

    /** Priced lines with the currency of all and the longest promised lead time, days; 0 without a quote. */
    record Priced(List<OrderedLine> lines, String currency, int leadTimeDays) {}

    Priced price(PurchaseId purchase, SupplierId supplier, List<Wanted> wanted, LocalDate day) {
        suppliers.needKnown(supplier);
        List<OrderedLine> lines = new ArrayList<>();
        String currency = null;
        int leadTime = 0;
        for (Wanted each : wanted) {
            int line = lines.size() + 1;
            Quote quote = each.quote() == null ? null : suppliers.quote(supplier, each.quote());
            if (quote != null) {
                leadTime = Math.max(leadTime, quote.leadTimeDays());
            }
            Money price = price(purchase, supplier, line, each, quote, day);
            if (currency != null && !currency.equals(price.currency())) {
                throw new PurchaseRefused.TwoCurrencies(purchase, currency, price.currency());
            }
            currency = price.currency();
            lines.add(line(purchase, line, each, quote, price));
        }
        return new Priced(lines, currency == null ? "" : currency, leadTime);
    }

    private static Money price(
            PurchaseId purchase, SupplierId supplier, int line, Wanted wanted, @Nullable Quote quote, LocalDate day) {
        Money given = wanted.unitPrice();
        if (quote != null) {
            Money quoted = quote.unitPrice(supplier, wanted.units(), day);
            return given == null ? quoted : given;
        }
        if (given == null) {
            throw new PurchaseRefused.PriceMissing(purchase, line);
        }
        return given;
    }

    private OrderedLine line(PurchaseId purchase, int line, Wanted wanted, @Nullable Quote quote, Money price) {
        String grant = wanted.grant() == null || wanted.grant().isBlank()
                ? null
                : wanted.grant().strip();
        if (quote != null) {
            return new OrderedLine(
                    line,
                    quote.material(),
                    quote.kind(),
                    quote.packing(),
                    wanted.units(),
                    price.minor(),
                    wanted.quote(),
                    wanted.siteId(),
                    grant);
        }
        if (wanted.materialCode() == null || wanted.unitCode() == null) {
            throw new PurchaseRefused.PriceMissing(purchase, line);
        }
        MaterialKind kind = items.kindOf(wanted.materialCode());
        Packing packing = Packing.of(
                kind,
                OrderUnit.onWire(wanted.unitCode(), wanted.packageCode()),
                wanted.content() == null ? "" : wanted.content());
        return new OrderedLine(
                line,
                wanted.materialCode(),
                kind,
                packing,
                wanted.units(),
                price.minor(),
                null,
                wanted.siteId(),
                grant);
    }
}
