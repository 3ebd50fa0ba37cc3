package org.bandtrail.supplystock.counts;

import java.util.ArrayList;
import java.util.List;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.countrules.CountRules;
import org.jspecify.annotations.Nullable;

/**
 * A line with what was counted, one figure for each round.
 *
 * @param tallies in the order of the rounds
 * @param reason why it differs, null until somebody says
 */
record CountLine(
        SheetLine sheet, List<Tally> tallies, @Nullable String reason) {
    CountLine {
        tallies = List.copyOf(tallies);
    }

    /**
     * What one person counted in one round.
     *
     * @param round 1, 2, 3 ...
     * @param quantity millimetres or pieces
     */
    record Tally(int round, long quantity, PersonId by) {}

    static CountLine of(SheetLine sheet) {
        return new CountLine(sheet, List.of(), null);
    }

    boolean countedIn(int round) {
        return tallies.stream().anyMatch(tally -> tally.round() == round);
    }

    boolean countedBy(PersonId person, int beforeRound) {
        return tallies.stream()
                .anyMatch(tally -> tally.round() < beforeRound && tally.by().equals(person));
    }

    /** With a figure; a second figure in the same round replaces the first. */
    CountLine counted(int round, long quantity, PersonId by) {
        List<Tally> next = new ArrayList<>(tallies);
        next.removeIf(tally -> tally.round() == round);
        next.add(new Tally(round, quantity, by));
        return new CountLine(sheet, next, reason);
    }

    CountLine because(String why) {
        return new CountLine(sheet, tallies, why);
    }

    /** Counted less the book figure; 0 while nothing is counted. */
    long difference() {
        return tallies.isEmpty() ? 0 : tallies.getLast().quantity() - sheet.book();
    }

    long differenceMinor() {
        return sheet.value(Math.abs(difference()));
    }

    /** Whether the last figure meets the books or an earlier count of the same line, within the tolerance. */
    boolean settled(CountRules rules) {
        if (tallies.isEmpty()) {
            return false;
        }
        long last = tallies.getLast().quantity();
        long tolerance = rules.tolerance(sheet.pieces(), sheet.book());
        boolean meetsBooks = Math.abs(last - sheet.book()) <= tolerance;
        boolean meetsCount = tallies.subList(0, tallies.size() - 1).stream()
                .anyMatch(earlier -> Math.abs(earlier.quantity() - last) <= tolerance);
        return meetsBooks || meetsCount;
    }
}
