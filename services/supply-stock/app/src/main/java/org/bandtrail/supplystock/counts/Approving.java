package org.bandtrail.supplystock.counts;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;

/** The rules of the approval: reasons for every difference, two pairs of eyes above a value, nothing that is elsewhere. */
record Approving(Count count) {

    List<CountEvent> approve(CountCommand.Approve approve) {
        count.requireStage(approve.countId(), Count.Stage.REVIEW, "approving");
        List<CountLine> differing = differing();
        List<SheetLine.Key> silent = differing.stream()
                .filter(line -> line.reason() == null)
                .map(line -> line.sheet().key())
                .toList();
        if (!silent.isEmpty()) {
            throw new CountRefused.ReasonsMissing(approve.countId(), silent);
        }
        requireSecondPerson(approve);
        differing.forEach(line -> requireHere(approve.countId(), line));
        return List.of(
                new CountEvent.Approved(approve.countId(), Postings.of(differing), approve.by(), approve.occurred()));
    }

    private List<CountLine> differing() {
        return count.lines().values().stream()
                .filter(line -> line.difference() != 0)
                .toList();
    }

    /** The value of all differences, of each currency for itself: what is too much does not make good what lacks. */
    private void requireSecondPerson(CountCommand.Approve approve) {
        long from = Objects.requireNonNull(count.rules()).secondPersonFromMinor();
        Map<String, Long> values = differing().stream()
                .collect(Collectors.groupingBy(
                        line -> Objects.requireNonNullElse(line.sheet().currency(), ""),
                        Collectors.summingLong(CountLine::differenceMinor)));
        long most = values.values().stream().mapToLong(Long::longValue).max().orElse(0);
        if (most >= from && most > 0 && count.counters().contains(approve.by())) {
            throw new CountRefused.SecondPersonNeeded(approve.countId(), approve.by(), most, from);
        }
    }

    private static void requireHere(CountId count, CountLine line) {
        SheetLine sheet = line.sheet();
        if (sheet.book() != 0 || line.difference() == 0) {
            return;
        }
        Place elsewhere = sheet.elsewhere();
        if (sheet.material() == null) {
            throw new CountRefused.FoundButNotHere(count, sheet.id(), "not received in the books");
        }
        boolean comesFromThere = elsewhere == null
                || elsewhere.kind() == PlaceKind.CREW
                || elsewhere.kind() == PlaceKind.DEPOT
                        && Objects.equals(elsewhere.depotId(), sheet.place().depotId());
        if (!comesFromThere) {
            throw new CountRefused.FoundButNotHere(count, sheet.id(), "at " + elsewhere + " in the books");
        }
    }
}
