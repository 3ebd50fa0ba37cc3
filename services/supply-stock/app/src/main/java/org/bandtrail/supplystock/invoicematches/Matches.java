package org.bandtrail.supplystock.invoicematches;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.kernel.Money;
import org.bandtrail.supplystock.billings.BilledLines;
import org.bandtrail.supplystock.billings.BilledSoFar;
import org.bandtrail.supplystock.billings.Matching;
import org.bandtrail.supplystock.billings.OrderLineFigures;
import org.bandtrail.supplystock.billings.ToBill;
import org.bandtrail.supplystock.billings.Verdict;
import org.bandtrail.supplystock.invoices.LineLink;
import org.bandtrail.supplystock.invoices.LineUse;
import org.bandtrail.supplystock.tolerances.TolerancePolicies;
import org.bandtrail.supplystock.tolerances.Tolerances;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The match of an invoice as it stands now, for people to look at; an approval matches again before it bills. */
@Component
class Matches {
    private final BilledLines billed;
    private final TolerancePolicies policies;

    Matches(BilledLines billed, TolerancePolicies policies) {
        this.billed = billed;
        this.policies = policies;
    }

    /**
     * A line to be matched.
     *
     * @param net what is to be paid for it before tax, negative on a credit note
     * @param acceptedBecause why a person accepted a difference, or null
     * @param approved whether it is approved already and counts as billed
     */
    record Line(
            String line,
            LineUse use,
            @Nullable LineLink link,
            Money net,
            @Nullable String acceptedBecause,
            boolean approved) {}

    /** The match of every line, in order; lines of one invoice that bill the same order line follow each other. */
    List<MatchedLine> of(String invoice, List<Line> lines) {
        Tolerances tolerances = policies.now();
        Map<String, BilledLines.Billed> done = billed.ofInvoice(invoice);
        Map<LineLink, BilledSoFar> running = new HashMap<>();
        List<MatchedLine> matched = new ArrayList<>();
        for (Line line : lines) {
            matched.add(line.use() == LineUse.GOODS ? goods(line, done, running, tolerances) : other(line));
        }
        return matched;
    }

    private static MatchedLine other(Line line) {
        String word = line.use().name().toLowerCase(Locale.ROOT);
        return MatchedLine.alone(line.line(), word, "Line %s is %s and no ordered goods.".formatted(line.line(), word));
    }

    private MatchedLine goods(
            Line line,
            Map<String, BilledLines.Billed> done,
            Map<LineLink, BilledSoFar> running,
            Tolerances tolerances) {
        LineLink link = line.link();
        Optional<OrderLineFigures> order =
                link == null ? Optional.empty() : billed.order(link.purchase(), link.purchaseLine());
        if (link == null || order.isEmpty()) {
            ToBill nothing = new ToBill(line.line(), 0, 0, line.net(), null);
            Matching.LineMatch match = Matching.of(null, BilledSoFar.NOTHING, nothing, tolerances);
            return MatchedLine.alone(line.line(), match.verdict().words(), match.sentence());
        }
        LineLink orderLine = new LineLink(link.purchase(), link.purchaseLine(), 0);
        BilledSoFar before =
                running.computeIfAbsent(orderLine, unused -> billed.before(link.purchase(), link.purchaseLine()));
        BilledLines.Billed paid = line.approved() ? done.get(line.line()) : null;
        if (paid != null) {
            return row(line, link, order.get(), before.quantity() - link.quantity(), paid);
        }
        ToBill bill = new ToBill(line.line(), link.purchaseLine(), link.quantity(), line.net(), line.acceptedBecause());
        Matching.LineMatch match = Matching.of(order.get(), before, bill, tolerances);
        running.put(
                orderLine,
                new BilledSoFar(
                        before.quantity() + link.quantity(),
                        before.netMinor() + line.net().minor(),
                        before.atReceiptMinor()));
        return row(line, link, order.get(), before.quantity(), match);
    }

    private static MatchedLine row(
            Line line, LineLink link, OrderLineFigures order, long before, BilledLines.Billed paid) {
        String sentence = paid.difference().minor() == 0
                ? "Line %s is approved at what its receipts cost.".formatted(line.line())
                : "Line %s is approved; %s was carried to its goods.".formatted(line.line(), paid.difference());
        return row(line, link, order, before, null, paid.difference(), paid.verdict(), false, sentence);
    }

    private static MatchedLine row(
            Line line, LineLink link, OrderLineFigures order, long before, Matching.LineMatch match) {
        Verdict verdict = match.verdict();
        boolean accepted = verdict.acceptable() && line.acceptedBecause() != null;
        return row(
                line,
                link,
                order,
                before,
                match.expected(),
                null,
                accepted ? verdict.words() + ", accepted" : verdict.words(),
                verdict.acceptable() && !accepted,
                accepted ? "Line %s is accepted: %s".formatted(line.line(), line.acceptedBecause()) : match.sentence());
    }

    private static MatchedLine row(
            Line line,
            LineLink link,
            OrderLineFigures order,
            long before,
            @Nullable Money expected,
            @Nullable Money carried,
            String verdict,
            boolean acceptable,
            String sentence) {
        return new MatchedLine(
                line.line(),
                link.purchase().value(),
                link.purchaseLine(),
                order.material(),
                order.measure().name(),
                order.ordered(),
                order.received(),
                order.waiting(),
                before,
                link.quantity(),
                expected,
                carried,
                verdict,
                acceptable,
                sentence);
    }
}
