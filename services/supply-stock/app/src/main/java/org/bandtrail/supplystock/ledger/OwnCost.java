package org.bandtrail.supplystock.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;

/**
 * Posts what is valued by itself: reels, at the charges their events carry (IAS 2, paragraphs 23-24), and batches whose
 * receipt is not in the books yet, without value.
 */
final class OwnCost {
    private final Fact fact;
    private final Known known;
    private final Stock stock;
    private final Lines lines;

    OwnCost(Fact fact, Known known, Stock stock, Lines lines) {
        this.fact = fact;
        this.known = known;
        this.stock = stock;
        this.lines = lines;
    }

    void post() {
        switch (fact.cost()) {
            case STANDS -> moves();
            case CHANGED -> costChanged(Place.SUPPLIER);
            case CHANGED_FROM_WIDE_REEL -> costChanged(Place.parse(known.origin()));
            case SENT_BACK ->
                fact.entry().moves().forEach(move -> lines.move(move, -fact.costDelta(), -fact.costDelta(), null, 0));
            case WRITTEN_DOWN -> spend(new Charge(Charge.WRITTEN_DOWN, 0, fact.costDelta()));
        }
        lines.heal();
    }

    /** The receipt; what was used before pays now, as the event says. */
    void receipt(List<LateUse> uses) {
        long cost = java.util.Objects.requireNonNull(fact.bought()).cost().minor();
        LateReceipt late = LateReceipt.of(stock, uses);
        lines.move(fact.entry().moves().getFirst(), cost, cost, null, 0);
        late.post(
                lines,
                fact.entry().moves().getFirst().target(),
                late.sharesOf(fact.entry().charges()));
        lines.heal();
    }

    private void moves() {
        List<Move> moves = fact.entry().moves();
        List<Charge> open = new ArrayList<>(fact.entry().charges());
        List<Long> crossing = moves.stream().map(OwnCost::leavesStock).toList();
        boolean crosses = crossing.stream().anyMatch(quantity -> quantity != 0);
        Charge main = crosses && !open.isEmpty() ? open.removeFirst() : null;
        List<Long> shares = main == null
                ? moves.stream().map(move -> 0L).toList()
                : LargestRemainder.split(
                        main.minor(), crossing.stream().map(Math::abs).toList());
        for (int number = 0; number < moves.size(); number++) {
            Move move = moves.get(number);
            if (main != null && crossing.get(number) != 0) {
                charged(move, main.account(), crossing.get(number), shares.get(number));
            } else {
                long along = inStock(move.source()) && inStock(move.target())
                        ? stock.shareAt(move.source(), move.quantity())
                        : 0;
                lines.move(move, along, along, null, 0);
            }
        }
        open.forEach(this::spend);
    }

    private void charged(Move move, String account, long used, long minor) {
        if (move.target().kind() == PlaceKind.SLIT) {
            lines.move(move, minor, minor, null, 0);
        } else if (used > 0) {
            lines.move(move, minor, 0, account, used);
        } else {
            lines.move(move, 0, -minor, account, used);
        }
    }

    private void costChanged(Place origin) {
        long charged = fact.entry().charges().stream().mapToLong(Charge::minor).sum();
        stock.spread(fact.costDelta() - charged).forEach((place, part) -> lines.value(origin, place, part));
        for (Charge charge : fact.entry().charges()) {
            if (charge.account().startsWith(Charge.slit(""))) {
                lines.value(origin, Place.parse(charge.account()), charge.minor());
            } else {
                lines.pays(origin, charge.account(), charge.minor(), 0);
            }
        }
    }

    /** A charge that no move explains is paid out of all that is in stock. */
    private void spend(Charge charge) {
        Map<Place, Long> parts = stock.spread(charge.minor());
        long used = charge.quantity();
        for (Map.Entry<Place, Long> part : parts.entrySet()) {
            lines.pays(part.getKey(), charge.account(), part.getValue(), used);
            used = 0;
        }
        if (used != 0) {
            lines.uses(charge.account(), used);
        }
    }

    /** Millimetres or pieces that leave stock by a move; negative if they come back, 0 if neither. */
    static long leavesStock(Move move) {
        boolean from = inStock(move.source());
        boolean to = inStock(move.target());
        if (from == to || move.source().kind().isOrigin() || move.target().kind() == PlaceKind.SUPPLIER) {
            return 0;
        }
        return from ? move.quantity() : -move.quantity();
    }

    static boolean inStock(Place place) {
        return place.kind().inStock();
    }
}
