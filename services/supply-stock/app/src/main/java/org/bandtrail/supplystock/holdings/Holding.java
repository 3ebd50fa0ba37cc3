package org.bandtrail.supplystock.holdings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.supplystock.costs.LargestRemainder;
import org.jspecify.annotations.Nullable;

/**
 * One reel or one batch in the books: how much was bought for how much, where it is, and which account has paid for
 * what. Law of the cost: the sum of all charges is the cumulative cost of what was used (see {@link CostBasis}), so cost
 * bought = cost in stock + cost charged + cost written off or down at every moment, to the cent.
 *
 * @param bought quantity of the receipt in millimetres or pieces, 0 while the receipt is not in the books
 * @param costMinor cost of the receipt in minor units
 * @param whereabouts balances by place
 * @param usedBy quantity that left stock by account
 * @param chargedTo cost in minor units by account
 * @param basis from where on the cost is spread
 */
public record Holding(
        long bought,
        long costMinor,
        Whereabouts whereabouts,
        SortedMap<String, Long> usedBy,
        SortedMap<String, Long> chargedTo,
        CostBasis basis) {
    public static final Holding NOTHING =
            new Holding(0, 0, Whereabouts.NOWHERE, new TreeMap<>(), new TreeMap<>(), CostBasis.START);

    /** The balance at a place. */
    public long at(Place place) {
        return whereabouts.at(place);
    }

    /** Cost charged to all accounts so far. */
    public long charged() {
        return chargedTo.values().stream().mapToLong(Long::longValue).sum();
    }

    /** Cost still in stock: at depots, with crews, missing and not written off. */
    public long costInStock() {
        return costMinor - charged();
    }

    /**
     * The entry for moves that one account pays for.
     *
     * @param account who pays if the material leaves stock, or is paid back if it returns
     */
    public Entry entry(List<Move> moves, String account, PersonId by, Occurred occurred) {
        long usedBefore = whereabouts.used();
        long usedAfter = whereabouts.usedAfter(moves);
        if (usedBefore == usedAfter) {
            return new Entry(moves, List.of(), by, occurred);
        }
        long minor = costOf(usedAfter) - costOf(usedBefore);
        return new Entry(moves, List.of(new Charge(account, usedAfter - usedBefore, minor)), by, occurred);
    }

    /**
     * The entry for the receipt. Material that the field had used before its receipt was entered is charged now, shared
     * over the accounts by the quantity each has used.
     */
    public Entry receiptEntry(Move receipt, long cost, PersonId by, Occurred occurred) {
        long due = bought(receipt.quantity(), cost).costOf(whereabouts.used());
        return new Entry(List.of(receipt), sharedByUse(due), by, occurred);
    }

    /** Charges of an amount to the accounts that used this, shared by how much each has used. */
    List<Charge> sharedByUse(long minor) {
        if (minor == 0) {
            return List.of();
        }
        List<String> accounts = usedBy.entrySet().stream()
                .filter(used -> used.getValue() > 0)
                .map(Map.Entry::getKey)
                .toList();
        List<Long> shares =
                LargestRemainder.split(minor, accounts.stream().map(usedBy::get).toList());
        List<Charge> charges = new ArrayList<>();
        for (int i = 0; i < accounts.size(); i++) {
            charges.add(new Charge(accounts.get(i), 0, shares.get(i)));
        }
        return charges;
    }

    private long costOf(long used) {
        return bought == 0 ? 0 : basis.of(used, bought, costMinor);
    }

    /** The holding after an entry. */
    public Holding after(Entry entry) {
        TreeMap<String, Long> used = new TreeMap<>(usedBy);
        TreeMap<String, Long> paid = new TreeMap<>(chargedTo);
        for (Charge charge : entry.charges()) {
            used.merge(charge.account(), charge.quantity(), Long::sum);
            paid.merge(charge.account(), charge.minor(), Long::sum);
        }
        return new Holding(bought, costMinor, whereabouts.after(entry.moves()), used, paid, basis);
    }

    /** The holding once its receipt is known. */
    public Holding bought(long quantity, long cost) {
        return new Holding(quantity, cost, whereabouts, usedBy, chargedTo, CostBasis.START);
    }

    /**
     * The holding after its cost or its bought quantity changed; what is charged so far stands.
     *
     * @param boughtDelta millimetres or pieces that were sent back, below zero
     * @param costDelta minor units
     * @param writtenDown minor units that were written down in this step
     */
    public Holding revalued(long boughtDelta, long costDelta, long writtenDown) {
        long now = bought + boughtDelta;
        CostBasis from =
                new CostBasis(Math.clamp(whereabouts.used(), 0, now), charged(), basis.writtenDown() + writtenDown);
        return new Holding(now, costMinor + costDelta, whereabouts, usedBy, chargedTo, from);
    }

    /**
     * Moves out of a person's custody. What the person was found not to have brought back is used first, because that
     * is where it went; what the books do not know at all makes the custody negative.
     */
    public List<Move> fromCustody(PersonId person, Place target, long quantity) {
        Place custody = Place.crew(person);
        Place missing = Place.missing(person);
        long held = Math.clamp(at(custody), 0, quantity);
        long reportedMissing = Math.clamp(at(missing), 0, quantity - held);
        List<Move> moves = new ArrayList<>();
        if (quantity > reportedMissing) {
            moves.add(new Move(custody, target, quantity - reportedMissing));
        }
        if (reportedMissing > 0) {
            moves.add(new Move(missing, target, reportedMissing));
        }
        return moves;
    }

    /**
     * Moves of a return that was measured or counted: what came back goes to the depot, the rest of the custody is
     * missing. If more came back than the books knew, the person's missing balance goes down, below zero if need be.
     */
    public List<Move> backToDepot(PersonId person, Place depot, long measured) {
        return measuredInto(Place.crew(person), depot, Place.missing(person), measured);
    }

    /** Moves of all that is at a place, to where it arrived as measured; the rest is missing, a surplus comes from there. */
    List<Move> measuredInto(Place custody, Place depot, Place missing, long measured) {
        long gap = at(custody) - measured;
        List<Move> moves = new ArrayList<>();
        if (gap < 0) {
            moves.add(new Move(missing, custody, -gap));
        }
        if (measured > 0) {
            moves.add(new Move(custody, depot, measured));
        }
        if (gap > 0) {
            moves.add(new Move(custody, missing, gap));
        }
        return moves;
    }

    /**
     * The entry for work in the field.
     *
     * @param site who pays if the material leaves stock, or null if no site is named
     */
    public Entry fieldEntry(
            Place source, Place target, long quantity, @Nullable SiteId site, PersonId by, Occurred occurred) {
        List<Move> moves = source.kind() == PlaceKind.CREW
                ? fromCustody(new PersonId(source.id()), target, quantity)
                : List.of(new Move(source, target, quantity));
        return entry(moves, site == null ? Charge.WRITTEN_OFF : Charge.site(site), by, occurred);
    }

    /** The move that settles a balance which does not add up: a surplus is written off, a deficit was found. */
    public Move settling(Place place) {
        long balance = at(place);
        return balance > 0 ? new Move(place, Place.WRITTEN_OFF, balance) : new Move(Place.SUPPLIER, place, -balance);
    }

    /** Whether books and field disagree about this place. */
    public boolean disagrees(Place place) {
        long balance = at(place);
        return place.kind() == PlaceKind.MISSING ? balance != 0 : !place.kind().isOrigin() && balance < 0;
    }
}
