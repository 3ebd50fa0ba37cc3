package org.bandtrail.supplystock.receiving;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.Length;
import org.bandtrail.kernel.MaterialKind;
import org.bandtrail.kernel.Pieces;
import org.bandtrail.supplystock.deliveries.Condition;
import org.bandtrail.supplystock.deliveries.DeliveredHolding;
import org.bandtrail.supplystock.deliveries.DeliveredLine;
import org.bandtrail.supplystock.deliveries.Finding;
import org.bandtrail.supplystock.deliveries.Finding.What;
import org.bandtrail.supplystock.purchases.OrderedLine;
import org.bandtrail.supplystock.suppliers.OrderUnit;
import org.jspecify.annotations.Nullable;

/**
 * Looks at what arrived and names what is not as it should be; pure. What is measured is never quite what the label
 * says, so small differences of length and width are let pass; how small is a setting of the programme.
 *
 * @param lengthPermille how much shorter or longer than stated a reel may be, per mille
 * @param widthMm how much wider or narrower than the item a reel may be, mm
 */
public record Inspection(int lengthPermille, long widthMm) {

    /**
     * What the line should have been.
     *
     * @param ordered line of the order, null if none
     * @param remainingUnits of the order line before this delivery; 0 if nobody waits for it
     * @param remaining the same in millimetres or pieces
     * @param statedUnits order units on the supplier's paper, null if nobody looked
     * @param itemWidthMm width of the item, null if it has none
     */
    public record Expected(
            @Nullable OrderedLine ordered,
            long remainingUnits,
            long remaining,
            @Nullable Long statedUnits,
            @Nullable Long itemWidthMm) {}

    /** All findings of one line. */
    public List<Finding> of(DeliveredLine line, Expected expected, LocalDate day) {
        List<Finding> findings = new ArrayList<>();
        OrderedLine ordered = expected.ordered();
        if (ordered != null && !ordered.material().equals(line.material())) {
            findings.add(new Finding(
                    line.line(),
                    "",
                    What.WRONG_ITEM,
                    ordered.material().value(),
                    line.material().value()));
        } else if (ordered != null) {
            addAmounts(line, ordered, expected, findings);
        }
        for (DeliveredHolding each : line.holdings()) {
            addCondition(line, each, expected, day, findings);
        }
        return findings;
    }

    private void addAmounts(DeliveredLine line, OrderedLine ordered, Expected expected, List<Finding> findings) {
        OrderUnit unit = ordered.packing().unit();
        long quantity = line.quantity();
        if (expected.remaining() == 0) {
            findings.add(new Finding(line.line(), "", What.NOT_EXPECTED, "nothing more", words(line.kind(), quantity)));
        }
        Long stated = expected.statedUnits();
        if (!unit.counted()) {
            long awaited = stated == null ? quantity : ordered.packing().base(line.kind(), stated);
            addDifference(line, "", awaited, quantity, findings);
            if (expected.remaining() > 0 && quantity > expected.remaining() + tolerance(expected.remaining())) {
                findings.add(new Finding(
                        line.line(),
                        "",
                        What.OVER,
                        words(line.kind(), expected.remaining()) + " to come",
                        words(line.kind(), quantity)));
            }
            return;
        }
        if (stated != null && stated != line.units()) {
            findings.add(new Finding(
                    line.line(),
                    "",
                    line.units() < stated ? What.SHORT : What.OVER,
                    units(stated, unit) + " on the paper",
                    units(line.units(), unit)));
        }
        if (expected.remaining() > 0 && line.units() > expected.remainingUnits()) {
            findings.add(new Finding(
                    line.line(),
                    "",
                    What.OVER,
                    units(expected.remainingUnits(), unit) + " to come",
                    units(line.units(), unit)));
        }
        addContents(line, ordered, findings);
    }

    /** Each reel against the length of one where a unit is a reel, otherwise all against all. */
    private void addContents(DeliveredLine line, OrderedLine ordered, List<Finding> findings) {
        if (line.units() == line.holdings().size()) {
            long one = ordered.packing().base(line.kind(), 1);
            line.holdings().forEach(each -> addDifference(line, each.id(), one, each.quantity(), findings));
        } else {
            addDifference(line, "", ordered.packing().base(line.kind(), line.units()), line.quantity(), findings);
        }
    }

    private void addDifference(DeliveredLine line, String id, long awaited, long found, List<Finding> findings) {
        long allowed = line.kind().onReels() ? tolerance(awaited) : 0;
        if (Math.abs(found - awaited) > allowed) {
            findings.add(new Finding(
                    line.line(),
                    id,
                    found < awaited ? What.SHORT : What.OVER,
                    words(line.kind(), awaited),
                    words(line.kind(), found)));
        }
    }

    private long tolerance(long length) {
        return length / 1000 * lengthPermille + length % 1000 * lengthPermille / 1000;
    }

    private void addCondition(
            DeliveredLine line, DeliveredHolding each, Expected expected, LocalDate day, List<Finding> findings) {
        if (each.condition() != Condition.SOUND) {
            boolean damaged = each.condition() == Condition.DAMAGED;
            findings.add(new Finding(
                    line.line(),
                    each.id(),
                    damaged ? What.DAMAGED : What.WRAPPING_TORN,
                    "sound",
                    damaged ? "damaged" : "wrapping torn"));
        }
        Long wanted = expected.itemWidthMm();
        Long width = each.widthMm();
        if (wanted != null && width != null && Math.abs(width - wanted) > widthMm) {
            findings.add(new Finding(line.line(), each.id(), What.WRONG_WIDTH, wanted + " mm", width + " mm"));
        }
        LocalDate expires = each.expiresOn();
        if (expires != null && expires.isBefore(day)) {
            findings.add(new Finding(line.line(), each.id(), What.EXPIRED, "good on " + day, "good until " + expires));
        }
    }

    private static String units(long units, OrderUnit unit) {
        return units + " " + (units == 1 ? unit.word() : unit == OrderUnit.BOX ? "boxes" : unit.word() + "s");
    }

    private static String words(MaterialKind kind, long quantity) {
        return kind.onReels()
                ? Length.ofMm(quantity).toString()
                : Pieces.of(quantity).toString();
    }
}
