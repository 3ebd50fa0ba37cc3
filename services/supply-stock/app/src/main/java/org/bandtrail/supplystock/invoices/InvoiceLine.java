package org.bandtrail.supplystock.invoices;

import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;

/**
 * One line as the supplier wrote it, with what it bills.
 *
 * @param line the supplier's number of the line
 * @param sellersItem the supplier's number of the item, or null
 * @param quantity decimal number as written, in {@code unit}
 * @param unit code of UN/CEFACT Recommendation 20 or, with X in front, 21
 * @param price decimal number as written, for {@code perQuantity} units
 * @param amount the line's sum as written, before tax
 * @param net the same after its share of the document's allowances; negative on a credit note
 * @param tax its share of the tax, with the sign of {@code net}
 * @param use what it is for
 * @param link the order line it bills, or null as long as nobody has said
 */
public record InvoiceLine(
        String line,
        String item,
        @Nullable String sellersItem,
        String quantity,
        String unit,
        String price,
        String perQuantity,
        Money amount,
        Money net,
        Money tax,
        LineUse use,
        @Nullable LineLink link) {

    /** The same line, billing this order line. */
    InvoiceLine linked(LineLink to) {
        return with(LineUse.GOODS, to);
    }

    /** The same line, being something else than ordered goods, or goods nobody has found the order of. */
    InvoiceLine used(LineUse other) {
        return with(other, null);
    }

    private InvoiceLine with(LineUse next, @Nullable LineLink to) {
        return new InvoiceLine(line, item, sellersItem, quantity, unit, price, perQuantity, amount, net, tax, next, to);
    }

    /** Net and tax together, minor units. */
    long grossMinor() {
        return net.minor() + tax.minor();
    }
}
