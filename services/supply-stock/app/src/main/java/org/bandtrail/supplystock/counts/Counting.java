package org.bandtrail.supplystock.counts;

import java.util.List;
import java.util.Objects;
import org.bandtrail.supplystock.holdings.Place;
import org.jspecify.annotations.Nullable;

/** The rules while figures are entered: whose turn it is, and what has to be counted again. */
record Counting(Count count) {

    List<CountEvent> enter(CountCommand.Enter enter) {
        count.requireStage(enter.countId(), Count.Stage.COUNTING, "entering a figure");
        if (enter.quantity() < 0) {
            throw new CountRefused.NoFigure(enter.id(), enter.quantity());
        }
        SheetLine sheet = line(enter);
        CountLine known = count.lines().get(sheet.key());
        boolean onSheet = known != null && !found(known);
        if (count.round() > 1 && known != null && !turn(known, sheet.key())) {
            throw new CountRefused.NotToBeRecounted(enter.id());
        }
        if (known != null && known.countedBy(enter.by(), count.round()) && !enter.alone()) {
            throw new CountRefused.SamePersonAgain(enter.id(), enter.by());
        }
        return List.of(new CountEvent.LineCounted(
                enter.countId(),
                sheet,
                onSheet,
                count.round(),
                enter.quantity(),
                enter.alone(),
                enter.by(),
                enter.occurred()));
    }

    /** In a later round the lines to be counted again, and what was first found in that round. */
    private boolean turn(CountLine known, SheetLine.Key key) {
        return count.again().contains(key) || known.tallies().getFirst().round() == count.round();
    }

    private static boolean found(CountLine line) {
        return line.sheet().book() == 0;
    }

    private SheetLine line(CountCommand.Enter enter) {
        Place scope = Objects.requireNonNull(count.scope());
        Place place = enter.place();
        if (place != null && !within(scope, place)) {
            throw new CountRefused.OutsideTheCount(enter.countId(), scope, place);
        }
        List<SheetLine> same = count.lines().values().stream()
                .map(CountLine::sheet)
                .filter(sheet -> sheet.holding().equals(enter.holding())
                        && sheet.id().equals(enter.id())
                        && (place == null || sheet.place().equals(place)))
                .toList();
        if (same.size() > 1) {
            throw new CountRefused.WhichBin(
                    enter.id(), same.stream().map(SheetLine::place).toList());
        }
        return same.isEmpty() ? found(enter.found(), place == null ? scope : place) : same.getFirst();
    }

    private static SheetLine found(SheetLine known, Place place) {
        return new SheetLine(
                known.holding(),
                known.id(),
                place,
                known.material(),
                known.kind(),
                0,
                known.bought(),
                known.costMinor(),
                known.currency(),
                known.elsewhere(),
                known.quantityElsewhere());
    }

    static boolean within(Place scope, @Nullable Place place) {
        return place != null
                && (place.equals(scope)
                        || scope.bin() == null
                                && place.kind() == scope.kind()
                                && Objects.equals(place.depotId(), scope.depotId()));
    }

    List<CountEvent> finish(CountCommand.Finish finish) {
        count.requireStage(finish.countId(), Count.Stage.COUNTING, "finishing");
        boolean first = count.round() == 1;
        List<SheetLine.Key> open = count.lines().entrySet().stream()
                .filter(line -> first || count.again().contains(line.getKey()))
                .filter(line -> !line.getValue().countedIn(count.round()))
                .map(java.util.Map.Entry::getKey)
                .toList();
        if (!open.isEmpty() && !(first && finish.restNotThere())) {
            throw new CountRefused.NotAllCounted(finish.countId(), open);
        }
        List<SheetLine.Key> again = count.lines().entrySet().stream()
                .filter(line -> !agreed(line.getValue(), open.contains(line.getKey()), finish))
                .map(java.util.Map.Entry::getKey)
                .toList();
        return List.of(new CountEvent.RoundFinished(
                finish.countId(), count.round(), open, again, finish.by(), finish.occurred()));
    }

    private boolean agreed(CountLine line, boolean notThere, CountCommand.Finish finish) {
        CountLine counted = notThere ? line.counted(count.round(), 0, finish.by()) : line;
        return counted.settled(Objects.requireNonNull(count.rules()));
    }
}
