package org.bandtrail.supplystock.invoices;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** An event of an invoice as its history tells it. */
record InvoiceWords(String what, @Nullable String note) {

    static InvoiceWords of(InvoiceEvent event) {
        return switch (event) {
            case InvoiceEvent.Registered registered ->
                new InvoiceWords("came in", registered.document().source());
            case InvoiceEvent.LineLinked linked ->
                new InvoiceWords(
                        "line %s linked".formatted(linked.line()),
                        "order %s line %d"
                                .formatted(
                                        linked.link().purchase(), linked.link().purchaseLine()));
            case InvoiceEvent.LineSorted sorted ->
                new InvoiceWords(
                        "line %s sorted".formatted(sorted.line()),
                        sorted.use().name().toLowerCase(Locale.ROOT));
            case InvoiceEvent.Held held -> new InvoiceWords(part(held.line()) + "held", held.reason());
            case InvoiceEvent.Settled settled ->
                new InvoiceWords(part(settled.line()) + how(settled.how()), settled.reason());
            case InvoiceEvent.ApprovedOnce once ->
                new InvoiceWords("approved by the first person", once.toPay().toString());
            case InvoiceEvent.Approved approved ->
                new InvoiceWords("approved for payment", approved.toPay().toString());
            case InvoiceEvent.ChargeSpread spread ->
                new InvoiceWords("charge spread", "%s by %s".formatted(spread.amount(), spread.landedCost()));
            case InvoiceEvent.Withdrawn withdrawn -> new InvoiceWords("withdrawn", withdrawn.reason());
        };
    }

    private static String part(@Nullable String line) {
        return line == null ? "" : "line %s ".formatted(line);
    }

    private static String how(Settlement how) {
        return switch (how) {
            case ACCEPTED -> "accepted";
            case PAY_RECEIVED -> "settled: only what came is paid";
            case NOT_PAID -> "settled: not paid";
        };
    }
}
