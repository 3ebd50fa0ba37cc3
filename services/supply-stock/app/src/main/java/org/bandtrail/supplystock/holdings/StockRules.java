package org.bandtrail.supplystock.holdings;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import org.bandtrail.kernel.DepotId;
import org.bandtrail.kernel.Money;
import org.bandtrail.kernel.Occurred;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.costs.PieceCost;
import org.jspecify.annotations.Nullable;

/**
 * What may be done with stock that no crew has: move it about, take in what arrived, correct it after a count, change
 * its cost. The same for reels and batches; only the words differ.
 *
 * @param subject what it is, for messages, such as {@code Reel [R-0001]}
 * @param inWords writes a quantity with its unit
 * @param currency ISO 4217 code of the receipt, or null while the receipt is not in the books
 */
public record StockRules(
        String subject,
        LongFunction<Object> inWords,
        Holding holding,
        @Nullable String currency) {

    /**
     * A move between places of stock.
     *
     * @param quantity millimetres or pieces, or null for all that is there
     * @throws StockRefused if the move does not go between these places or the source has less
     */
    public Entry relocate(
            StockMove move, Place source, Place target, @Nullable Long quantity, PersonId by, Occurred occurred) {
        if (!move.fits(source, target)) {
            throw new StockRefused.MoveUnfit(subject, move, source, target);
        }
        long there = holding.at(source);
        long wanted = quantity == null ? there : quantity;
        requireThere(source, wanted);
        return new Entry(List.of(new Move(source, target, wanted)), List.of(), by, occurred);
    }

    private void requireThere(Place source, long wanted) {
        long there = holding.at(source);
        if (wanted <= 0 || there < wanted) {
            throw new StockRefused.NotThere(
                    subject,
                    source,
                    inWords.apply(wanted),
                    inWords.apply(there),
                    holding.whereabouts().inWords(inWords));
        }
    }

    /** What goes back to the supplier takes its share of the cost that is in stock with it, in minor units. */
    public long costOfSentBack(long quantity) {
        long unused = holding.bought() - Math.clamp(holding.whereabouts().used(), 0, holding.bought());
        return unused == 0 ? 0 : new PieceCost(holding.costInStock(), unused).ofFirst(Math.clamp(quantity, 0, unused));
    }

    /** How much of the bought quantity is taken back; what was found later was never bought. */
    public long boughtOfSentBack(long quantity) {
        long unused = holding.bought() - Math.clamp(holding.whereabouts().used(), 0, holding.bought());
        return Math.clamp(quantity, 0, unused);
    }

    /** What arrived, as measured or counted; the rest of what was on its way is missing with who carried it. */
    public List<Move> arrive(Place source, Place target, long measured, PersonId carrier) {
        return holding.measuredInto(source, target, Place.missing(carrier), measured);
    }

    /**
     * The correcting entry after a count.
     *
     * @param difference counted less expected, in millimetres or pieces
     * @throws StockRefused if there is no difference or no reason
     */
    public Entry adjust(Place place, long difference, String reason, PersonId by, Occurred occurred) {
        if (difference == 0) {
            throw new StockRefused.NothingChanges(subject);
        }
        if (reason.isBlank()) {
            throw new StockRefused.ReasonNeeded(subject);
        }
        Move move = difference < 0
                ? new Move(place, Place.WRITTEN_OFF, -difference)
                : new Move(Place.SUPPLIER, place, difference);
        return holding.entry(List.of(move), Charge.WRITTEN_OFF, by, occurred);
    }

    /**
     * The entry of a changed cost: what is used already pays its part, by use; the rest stays in stock.
     *
     * @throws StockRefused if nothing was received, the currency differs, nothing changes, or stock would cost less
     *     than nothing
     */
    public Entry changeCost(Money delta, PersonId by, Occurred occurred) {
        requireCurrency(delta);
        if (delta.minor() == 0) {
            throw new StockRefused.NothingChanges(subject);
        }
        long used = Math.clamp(holding.whereabouts().used(), 0, holding.bought());
        long spent = holding.charged() - holding.basis().writtenDown();
        long leastShare = used == 0 ? 0 : -spent;
        long mostShare = holding.costInStock() + delta.minor();
        if (leastShare > mostShare) {
            throw new StockRefused.CostBelowZero(subject, delta.minor(), holding.costInStock());
        }
        long usedPart = used == 0 ? 0 : Math.clamp(shareOfUsed(delta.minor(), used), leastShare, mostShare);
        return new Entry(List.of(), holding.sharedByUse(usedPart), by, occurred);
    }

    /** What the used part bears of a change; whatever it cannot bear, because it cost less, the rest does. */
    private long shareOfUsed(long delta, long used) {
        return Long.signum(delta) * new PieceCost(Math.abs(delta), holding.bought()).ofFirst(used);
    }

    /**
     * The entry of a write-down to what the stock is still worth (IAS 2.9, 2.28-34).
     *
     * @throws StockRefused if the amount is not above zero or more than the stock costs, or the reason is missing
     */
    public Entry writeDown(Money amount, String reason, PersonId by, Occurred occurred) {
        requireCurrency(amount);
        if (amount.minor() <= 0 || amount.minor() > holding.costInStock()) {
            throw new StockRefused.WriteDownUnfit(subject, amount, Money.of(holding.costInStock(), amount.currency()));
        }
        if (reason.isBlank()) {
            throw new StockRefused.ReasonNeeded(subject);
        }
        return new Entry(List.of(), List.of(new Charge(Charge.WRITTEN_DOWN, 0, amount.minor())), by, occurred);
    }

    private void requireCurrency(Money amount) {
        if (currency == null) {
            throw new StockRefused.ReceiptUnknown(subject);
        }
        if (!currency.equals(amount.currency())) {
            throw new StockRefused.OtherCurrency(subject, amount, currency);
        }
    }

    /**
     * The entry of a length that goes into narrower reels; its cost goes with it.
     *
     * @throws StockRefused if the receipt is unknown or the place does not have it
     */
    public Entry slit(String slitting, Place source, long quantity, PersonId by, Occurred occurred) {
        if (currency == null) {
            throw new StockRefused.ReceiptUnknown(subject);
        }
        if (source.kind() != PlaceKind.DEPOT) {
            throw new StockRefused.NotThere(
                    subject,
                    source,
                    inWords.apply(quantity),
                    inWords.apply(holding.at(source)),
                    holding.whereabouts().inWords(inWords));
        }
        requireThere(source, quantity);
        List<Move> moves = List.of(new Move(source, Place.slit(slitting), quantity));
        return holding.entry(moves, Charge.slit(slitting), by, occurred);
    }

    /** Moves of all that this depot has, loose and in its bins, to a person. Empty if it has nothing. */
    public List<Move> outOf(DepotId depot, Place target) {
        List<Move> moves = new ArrayList<>();
        holding.whereabouts().balances().forEach((place, balance) -> {
            if (place.inDepot(depot) && balance > 0) {
                moves.add(new Move(place, target, balance));
            }
        });
        return moves;
    }

    /** The first of these moves that make up a quantity, the last one cut to fit. */
    public static List<Move> first(List<Move> moves, long quantity) {
        List<Move> taken = new ArrayList<>();
        long open = quantity;
        for (Move move : moves) {
            long part = Math.min(open, move.quantity());
            if (part > 0) {
                taken.add(new Move(move.source(), move.target(), part));
            }
            open -= part;
        }
        return taken;
    }
}
