package org.bandtrail.supplystock.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bandtrail.supplystock.holdings.Move;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * Writes the lines of one event, and moves quantity and value in the books that carry them at the same time, so that
 * lines and balances cannot differ.
 */
final class Lines {
    /** Where quantities pass when a receipt names what they are. */
    static final String NOT_RECEIVED = "not-received:";

    private static final String CARRIED_OVER = "carried over";
    private final Fact fact;
    private final Known known;
    private final String period;
    private final Membership crews;
    private final Stock values;
    private final @Nullable Stock pieces;
    private final String tree;
    private final List<LedgerRow> written = new ArrayList<>();

    /**
     * @param values where the value lies: the reel, or the pool of the item
     * @param pieces the batch, if its value lies in a pool; null otherwise
     */
    Lines(Fact fact, Known known, String period, Membership crews, Stock values, @Nullable Stock pieces) {
        this.fact = fact;
        this.known = known;
        this.period = period;
        this.crews = crews;
        this.values = values;
        this.pieces = pieces;
        this.tree = fact.entry().moves().stream()
                .flatMap(move -> Stream.of(move.target(), move.source()))
                .filter(place -> place.kind() == PlaceKind.TREE)
                .map(Place::id)
                .findFirst()
                .orElse("");
    }

    List<LedgerRow> written() {
        return List.copyOf(written);
    }

    /** A move with its value; what does not arrive is paid by the account. */
    void move(Move move, long out, long in, @Nullable String account, long used) {
        shift(move.source(), -move.quantity(), -out);
        shift(move.target(), move.quantity(), in);
        add(
                known,
                fact.what(),
                fact.adjusts(),
                move.source().toString(),
                move.target().toString(),
                move.quantity(),
                out,
                in,
                account,
                used,
                treeOf(move),
                custody(move));
    }

    /** Value that changes place without anything that moves. */
    void value(Place source, Place target, long minor) {
        value(source, target, minor, fact.what(), fact.adjusts());
    }

    private void value(Place source, Place target, long minor, String what, boolean adjusts) {
        values.at(source).add(0, -minor);
        values.at(target).add(0, minor);
        String from = source.toString();
        add(known, what, adjusts, from, target.toString(), 0, minor, minor, null, 0, "", by());
    }

    /** An account pays, out of a place. */
    void pays(Place source, String account, long minor, long used) {
        values.at(source).add(0, -minor);
        String from = source.toString();
        add(known, fact.what(), fact.adjusts(), from, null, 0, minor, 0, account, used, tree, by());
    }

    /** An account gets something back, out of what it paid before. */
    void paysBack(Place target, String account, long minor) {
        values.at(target).add(0, minor);
        add(known, fact.what(), true, null, target.toString(), 0, 0, minor, account, 0, "", by());
    }

    /** An account used something that has no cost. */
    void uses(String account, long used) {
        add(known, fact.what(), fact.adjusts(), null, null, 0, 0, 0, account, used, tree, by());
    }

    /**
     * A receipt names what is at a place already.
     *
     * @param quantity negative where the field was ahead of the books
     * @param taken minor units that leave the place for who used it
     */
    void named(Place place, long quantity, long taken) {
        String at = place.toString();
        boolean there = quantity > 0;
        long size = Math.abs(quantity);
        values.at(place).add(pieces == null ? 0 : quantity, -taken);
        String source = there ? at : NOT_RECEIVED;
        String target = there ? NOT_RECEIVED : at;
        if (size > 0) {
            add(Known.NOT_YET, "received", true, source, target, size, 0, 0, null, 0, "", by());
        }
        long along = there ? -taken : taken;
        add(known, "received", true, target, source, size, along, along, null, 0, "", by());
    }

    /** A receipt names what an account used already; it pays now. */
    void named(LateUse use, long minor) {
        String who = use.account();
        long used = use.quantity();
        if (used != 0) {
            add(Known.NOT_YET, use.what(), true, null, null, 0, 0, 0, who, -used, use.tree(), use.person());
            written.add(written.removeLast().countingFor(use.crew()));
        }
        add(known, use.what(), false, NOT_RECEIVED, null, 0, minor, 0, who, used, use.tree(), use.person());
        written.add(written.removeLast().countingFor(use.crew())); // of its own day, not of the receipt's
    }

    /** Value that lies where nothing is any more goes to where something is. */
    void heal() {
        values.stranded().forEach((place, minor) -> {
            Place carrier = values.carrier();
            if (!carrier.equals(place)) {
                value(place, carrier, minor, CARRIED_OVER, true);
            }
        });
    }

    private void shift(Place place, long quantity, long minor) {
        values.at(place).add(quantity, minor);
        if (pieces != null) {
            pieces.at(place).add(quantity, 0);
        }
    }

    private void add(
            Known of,
            String what,
            boolean adjusts,
            @Nullable String source,
            @Nullable String target,
            long quantity,
            long out,
            long in,
            @Nullable String account,
            long used,
            String onTree,
            String person) {
        written.add(new LedgerRow(
                fact,
                written.size(),
                of,
                what,
                adjusts,
                source,
                target,
                quantity,
                out,
                in,
                account,
                used,
                onTree,
                person,
                crews.crewOf(person, fact.entry().occurred().happened(), fact.note()),
                period));
    }

    private String treeOf(Move move) {
        return move.target().kind() == PlaceKind.TREE
                ? move.target().id()
                : move.source().kind() == PlaceKind.TREE ? move.source().id() : tree;
    }

    private String custody(Move move) {
        return Stream.of(move.source(), move.target())
                .filter(place -> place.kind() == PlaceKind.CREW || place.kind() == PlaceKind.MISSING)
                .map(Place::id)
                .findFirst()
                .orElse(by());
    }

    private String by() {
        return fact.entry().by().value();
    }
}
