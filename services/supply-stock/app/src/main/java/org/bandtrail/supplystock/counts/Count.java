package org.bandtrail.supplystock.counts;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bandtrail.kernel.PersonId;
import org.bandtrail.supplystock.countrules.CountRules;
import org.bandtrail.supplystock.holdings.Place;
import org.bandtrail.supplystock.holdings.PlaceKind;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a count.
 *
 * @param scope what is counted, null until opened
 * @param rules the rules it keeps, null until opened
 * @param round 1 is the first count, every further round counts again what did not agree
 * @param lines by reel or batch and place, in the order of the sheet, then as found
 * @param again lines to be counted again in this round, empty in the first
 */
public record Count(
        @Nullable Place scope,
        @Nullable CountRules rules,
        Stage stage,
        int round,
        Map<SheetLine.Key, CountLine> lines,
        Set<SheetLine.Key> again) {
    /** A count nobody has opened. */
    public static final Count UNKNOWN = new Count(null, null, Stage.UNKNOWN, 0, Map.of(), Set.of());

    /** How far a count is. */
    public enum Stage {
        /** Not opened. */
        UNKNOWN,
        /** Being counted, or counted again. */
        COUNTING,
        /** All figures are there; differences are looked at. */
        REVIEW,
        /** Approved and posted. */
        APPROVED,
        /** Given up. */
        CANCELLED
    }

    /**
     * What a command makes happen.
     *
     * @throws CountRefused if the wish cannot be granted
     */
    public List<CountEvent> decide(CountCommand command) {
        return switch (command) {
            case CountCommand.Open open -> open(open);
            case CountCommand.Enter enter -> new Counting(this).enter(enter);
            case CountCommand.Finish finish -> new Counting(this).finish(finish);
            case CountCommand.Explain explain -> explain(explain);
            case CountCommand.Approve approve -> new Approving(this).approve(approve);
            case CountCommand.Cancel cancel -> cancel(cancel);
        };
    }

    private List<CountEvent> open(CountCommand.Open open) {
        if (scope != null) {
            throw new CountRefused.CountOpenAlready(open.countId(), scope);
        }
        if (open.scope().kind() != PlaceKind.DEPOT) {
            throw new CountRefused.NotCountable(open.scope());
        }
        return List.of(new CountEvent.Opened(
                open.countId(), open.scope(), List.copyOf(open.sheet()), open.rules(), open.by(), open.occurred()));
    }

    private List<CountEvent> explain(CountCommand.Explain explain) {
        requireStage(explain.countId(), Stage.REVIEW, "giving a reason");
        CountLine line = lines.get(explain.line());
        if (line == null || line.difference() == 0) {
            throw new CountRefused.NothingToExplain(explain.countId(), explain.line());
        }
        if (explain.reason().isBlank()) {
            throw new CountRefused.ReasonsMissing(explain.countId(), List.of(explain.line()));
        }
        return List.of(new CountEvent.DifferenceExplained(
                explain.countId(), explain.line(), explain.reason().strip(), explain.by(), explain.occurred()));
    }

    private List<CountEvent> cancel(CountCommand.Cancel cancel) {
        if (stage != Stage.COUNTING && stage != Stage.REVIEW) {
            throw new CountRefused.NotAtThisStep(cancel.countId(), stage, "cancelling");
        }
        if (cancel.reason().isBlank()) {
            throw new CountRefused.ReasonsMissing(cancel.countId(), List.of("cancelling"));
        }
        return List.of(
                new CountEvent.Cancelled(cancel.countId(), cancel.reason().strip(), cancel.by(), cancel.occurred()));
    }

    void requireStage(CountId count, Stage wanted, String what) {
        if (stage != wanted) {
            throw new CountRefused.NotAtThisStep(count, stage, what);
        }
    }

    /** Everybody who counted a line. */
    Set<PersonId> counters() {
        Set<PersonId> people = new HashSet<>();
        lines.values().forEach(line -> line.tallies().forEach(tally -> people.add(tally.by())));
        return people;
    }

    /** The count after an event. */
    public Count evolve(CountEvent event) {
        return switch (event) {
            case CountEvent.Opened opened -> opened(opened);
            case CountEvent.LineCounted counted ->
                with(counted.line(), counted.round(), counted.quantity(), counted.by());
            case CountEvent.RoundFinished finished -> finished(finished);
            case CountEvent.DifferenceExplained explained -> {
                Map<SheetLine.Key, CountLine> next = new LinkedHashMap<>(lines);
                next.computeIfPresent(explained.line(), (key, line) -> line.because(explained.reason()));
                yield new Count(scope, rules, stage, round, next, again);
            }
            case CountEvent.Approved _ -> new Count(scope, rules, Stage.APPROVED, round, lines, again);
            case CountEvent.Cancelled _ -> new Count(scope, rules, Stage.CANCELLED, round, lines, again);
        };
    }

    private static Count opened(CountEvent.Opened opened) {
        Map<SheetLine.Key, CountLine> sheet = new LinkedHashMap<>();
        opened.sheet().forEach(line -> sheet.put(line.key(), CountLine.of(line)));
        return new Count(opened.scope(), opened.rules(), Stage.COUNTING, 1, sheet, Set.of());
    }

    private Count with(SheetLine sheet, int inRound, long quantity, PersonId by) {
        Map<SheetLine.Key, CountLine> next = new LinkedHashMap<>(lines);
        CountLine line = next.getOrDefault(sheet.key(), CountLine.of(sheet));
        next.put(sheet.key(), line.counted(inRound, quantity, by));
        return new Count(scope, rules, stage, round, next, again);
    }

    private Count finished(CountEvent.RoundFinished finished) {
        Map<SheetLine.Key, CountLine> next = new LinkedHashMap<>(lines);
        finished.notThere()
                .forEach(key ->
                        next.computeIfPresent(key, (same, line) -> line.counted(finished.round(), 0, finished.by())));
        boolean done = finished.again().isEmpty();
        return new Count(
                scope,
                rules,
                done ? Stage.REVIEW : Stage.COUNTING,
                done ? round : round + 1,
                next,
                Set.copyOf(new ArrayList<>(finished.again())));
    }
}
