package org.bandtrail.supplystock.ledger;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.bandtrail.supplystock.costpolicies.CostMethod;
import org.bandtrail.supplystock.holdings.Charge;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;

/**
 * Posts the facts of a received batch of fasteners, at the cost of its pool (IAS 2, paragraphs 25 and 27). Of its
 * events the ledger takes moves, accounts and what was bought, but not the charges: those are of the batch alone.
 * Only a changed cost is charged as the event says, because it follows the pieces that were really used.
 */
final class PoolCost {
    private final Fact fact;
    private final Pool pool;
    private final Lines lines;
    private final CostMethod method;
    private final String account;

    PoolCost(Fact fact, Pool pool, Lines lines, CostMethod method) {
        this.fact = fact;
        this.pool = pool;
        this.lines = lines;
        this.method = method;
        this.account = fact.entry().charges().isEmpty()
                ? Charge.WRITTEN_OFF
                : fact.entry().charges().getFirst().account();
    }

    void post() {
        switch (fact.cost()) {
            case STANDS -> fact.entry().moves().forEach(this::move);
            case CHANGED, CHANGED_FROM_WIDE_REEL -> costChanged();
            case SENT_BACK -> fact.entry().moves().forEach(this::sentBack);
            case WRITTEN_DOWN -> writtenDown();
        }
        lines.heal();
    }

    /**
     * The receipt: first who used pieces the books did not have pays, then what the batch was used for before it
     * came.
     */
    void receipt(LateReceipt late) {
        Move move = fact.entry().moves().getFirst();
        long cost = Objects.requireNonNull(fact.bought()).cost().minor();
        long deficit = deficit();
        long due = deficit == 0 ? 0 : Share.of(cost, Math.min(deficit, move.quantity()), move.quantity());
        Map<String, Long> payers = pool.payers.share(due);
        long kept = cost - payers.values().stream().mapToLong(Long::longValue).sum();
        lines.move(move, kept, kept, null, 0);
        payers.forEach((payer, minor) -> {
            lines.pays(move.source(), payer, minor, 0);
            pool.payers.pays(payer, 0, minor);
        });
        pool.put(batch(), move.quantity(), kept, deficit);
        long owed = late.owed();
        if (owed < 0) {
            pool.put("", -owed, 0, deficit());
        }
        Map<LateUse, Long> shares = late.sharesOf(owed > 0 ? pool.issue(owed, method) : 0);
        shares.forEach((use, minor) -> pool.payers.pays(use.account(), use.quantity(), minor));
        late.post(lines, move.target(), shares);
        lines.heal();
    }

    private void move(Move move) {
        long used = OwnCost.leavesStock(move);
        boolean from = OwnCost.inStock(move.source());
        boolean to = OwnCost.inStock(move.target());
        if (used > 0) {
            long cost = pool.issue(used, method);
            lines.move(move, cost, 0, account, used);
            pool.payers.pays(account, used, cost);
        } else if (used < 0) {
            long worth = pool.worthOfReturned(account, -used);
            pool.put("", -used, worth, deficit());
            lines.move(move, 0, worth, account, used);
            pool.payers.pays(account, used, -worth);
        } else if (from && to) {
            long along = pool.stock.shareAt(move.source(), move.quantity());
            lines.move(move, along, along, null, 0);
        } else if (move.source().kind() == PlaceKind.SUPPLIER && to) {
            pool.put("", move.quantity(), 0, deficit());
            lines.move(move, 0, 0, null, 0);
        } else if (move.source().kind() == PlaceKind.SUPPLIER) {
            lines.move(move, 0, 0, account, move.quantity());
            pool.payers.pays(account, move.quantity(), 0);
        } else {
            lines.move(move, 0, 0, null, 0);
        }
    }

    private void sentBack(Move move) {
        long cost = -fact.costDelta();
        long there = Math.max(0, pool.stock.quantity());
        lines.move(move, cost, cost, null, 0);
        long lacking = pool.lower(batch(), cost);
        pool.drop(batch(), Math.min(there, move.quantity()));
        cover(lacking);
    }

    private void costChanged() {
        List<Charge> charges = fact.entry().charges();
        long rest = fact.costDelta() - charges.stream().mapToLong(Charge::minor).sum();
        pool.stock.spread(rest).forEach((place, part) -> lines.value(Place.SUPPLIER, place, part));
        charges.forEach(charge -> {
            lines.pays(Place.SUPPLIER, charge.account(), charge.minor(), 0);
            pool.payers.pays(charge.account(), 0, charge.minor());
        });
        if (rest > 0) {
            pool.raise(batch(), rest);
        } else {
            cover(pool.lower(batch(), -rest));
        }
    }

    private void writtenDown() {
        long lowered = fact.costDelta() - pool.lower(batch(), fact.costDelta());
        pool.stock.spread(lowered).forEach((place, part) -> lines.pays(place, Charge.WRITTEN_DOWN, part, 0));
    }

    /** Stock gave more than it had, so those who used pieces were charged too much before: they get it back. */
    private void cover(long lacking) {
        Map<String, Long> shares = pool.payers.share(lacking);
        shares.forEach((payer, minor) -> {
            lines.paysBack(pool.stock.carrier(), payer, minor);
            pool.payers.pays(payer, 0, -minor);
        });
        long uncovered =
                lacking - shares.values().stream().mapToLong(Long::longValue).sum();
        if (uncovered != 0) {
            pool.raise("", -uncovered);
        }
    }

    private long deficit() {
        return Math.max(0, -pool.stock.quantity());
    }

    private String batch() {
        return fact.holding().id();
    }
}
