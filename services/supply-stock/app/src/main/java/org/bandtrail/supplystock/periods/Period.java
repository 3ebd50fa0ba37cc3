package org.bandtrail.supplystock.periods;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The rules of the months of one set of books.
 *
 * @param closings how each close left the books closed: the last entry is the last closed month, the one before it what
 *     a reopening falls back to
 * @param signatures by month, then by check
 * @param asked the request to reopen that waits for a second person, null if there is none
 */
public record Period(
        List<YearMonth> closings,
        Map<YearMonth, Map<String, PeriodEvent.CheckSigned>> signatures,
        PeriodEvent.@Nullable ReopeningAsked asked) {
    /** Books of which nothing was ever closed. */
    public static final Period NEVER_CLOSED = new Period(List.of(), Map.of(), null);

    /** Keeps its own copies. */
    public Period {
        closings = List.copyOf(closings);
        signatures = Map.copyOf(signatures);
    }

    /** The month of UTC in which a moment lies. */
    public static YearMonth monthOf(Instant moment) {
        return YearMonth.from(moment.atOffset(ZoneOffset.UTC));
    }

    /**
     * The month to which an entry posts: its own while that is open, else the earliest open one.
     *
     * @param happened the entry's own date, which it keeps
     * @param closedThrough the last closed month when the entry is heard, null if none is closed
     */
    public static YearMonth postsTo(Instant happened, @Nullable YearMonth closedThrough) {
        YearMonth own = monthOf(happened);
        return closedThrough == null || own.isAfter(closedThrough) ? own : closedThrough.plusMonths(1);
    }

    /** The last closed month, null if none is. */
    public @Nullable YearMonth closedThrough() {
        return closings.isEmpty() ? null : closings.getLast();
    }

    /** Whether a month is closed. */
    public boolean closed(YearMonth month) {
        return !closings.isEmpty() && !month.isAfter(closings.getLast());
    }

    /**
     * What a command makes happen.
     *
     * @throws PeriodRefused if the wish cannot be granted
     */
    public List<PeriodEvent> decide(PeriodCommand command) {
        return switch (command) {
            case PeriodCommand.SignCheck sign -> sign(sign);
            case PeriodCommand.Close close -> close(close);
            case PeriodCommand.AskToReopen ask -> ask(ask);
            case PeriodCommand.Reopen reopen -> reopen(reopen);
            case PeriodCommand.DropReopening drop -> {
                waiting(drop.month());
                yield List.of(new PeriodEvent.ReopeningDropped(
                        drop.books(), drop.month(), reason(drop.month(), drop.reason()), drop.by(), drop.occurred()));
            }
        };
    }

    private List<PeriodEvent> sign(PeriodCommand.SignCheck sign) {
        if (closed(sign.month())) {
            throw new PeriodRefused.MonthClosedAlready(sign.month());
        }
        if (sign.found().clean()) {
            throw new PeriodRefused.CheckCleanAlready(sign.month(), sign.found().check());
        }
        return List.of(new PeriodEvent.CheckSigned(
                sign.books(),
                sign.month(),
                sign.found(),
                reason(sign.month(), sign.reason()),
                sign.by(),
                sign.occurred()));
    }

    private List<PeriodEvent> close(PeriodCommand.Close close) {
        YearMonth month = close.month();
        if (closed(month)) {
            throw new PeriodRefused.MonthClosedAlready(month);
        }
        if (!month.isBefore(close.running())) {
            throw new PeriodRefused.MonthNotOver(month, close.running());
        }
        if (!closings.isEmpty() && !month.equals(closings.getLast().plusMonths(1))) {
            throw new PeriodRefused.MonthOutOfOrder(month, closings.getLast().plusMonths(1));
        }
        List<CheckPassed> passed = new ArrayList<>();
        List<CheckFound> unsigned = new ArrayList<>();
        for (CheckFound found : close.found()) {
            PeriodEvent.CheckSigned signature = signature(month, found);
            if (found.clean()) {
                passed.add(CheckPassed.clean(found));
            } else if (signature != null) {
                passed.add(CheckPassed.signed(found, signature));
            } else {
                unsigned.add(found);
            }
        }
        if (!unsigned.isEmpty()) {
            throw new PeriodRefused.ChecksOpen(month, unsigned);
        }
        return List.of(new PeriodEvent.Closed(close.books(), month, passed, close.by(), close.occurred()));
    }

    /** The signature that holds for what a check finds now: one for exactly these open things. */
    public PeriodEvent.@Nullable CheckSigned signature(YearMonth month, CheckFound found) {
        PeriodEvent.CheckSigned signed =
                signatures.getOrDefault(month, Map.of()).get(found.check());
        return signed != null && signed.found().fingerprint().equals(found.fingerprint()) ? signed : null;
    }

    private List<PeriodEvent> ask(PeriodCommand.AskToReopen ask) {
        YearMonth last = closedThrough();
        if (last == null || !ask.month().equals(last)) {
            throw new PeriodRefused.NotTheLastClosed(ask.month(), last);
        }
        if (asked != null) {
            throw new PeriodRefused.ReopeningAskedAlready(asked);
        }
        return List.of(new PeriodEvent.ReopeningAsked(
                ask.books(), ask.month(), reason(ask.month(), ask.reason()), ask.by(), ask.occurred()));
    }

    private List<PeriodEvent> reopen(PeriodCommand.Reopen reopen) {
        PeriodEvent.ReopeningAsked waiting = waiting(reopen.month());
        if (waiting.by().equals(reopen.by())) {
            throw new PeriodRefused.SecondPersonNeeded(reopen.month(), reopen.by());
        }
        YearMonth before = closings.size() < 2 ? null : closings.get(closings.size() - 2);
        return List.of(new PeriodEvent.Reopened(
                reopen.books(),
                reopen.month(),
                before,
                waiting.reason(),
                waiting.by(),
                reopen.by(),
                reopen.occurred()));
    }

    private PeriodEvent.ReopeningAsked waiting(YearMonth month) {
        if (asked == null || !asked.month().equals(month)) {
            throw new PeriodRefused.NobodyAskedToReopen(month);
        }
        return asked;
    }

    private static String reason(YearMonth month, String reason) {
        if (reason.isBlank()) {
            throw new PeriodRefused.ReasonMissing(month);
        }
        return reason.strip();
    }

    /** The months after an event. */
    public Period evolve(PeriodEvent event) {
        return switch (event) {
            case PeriodEvent.CheckSigned signed -> {
                Map<String, PeriodEvent.CheckSigned> ofMonth =
                        new HashMap<>(signatures.getOrDefault(signed.month(), Map.of()));
                ofMonth.put(signed.found().check(), signed);
                yield new Period(closings, with(signed.month(), ofMonth), asked);
            }
            case PeriodEvent.Closed closed -> {
                List<YearMonth> longer = new ArrayList<>(closings);
                longer.add(closed.month());
                yield new Period(longer, signatures, null);
            }
            case PeriodEvent.ReopeningAsked request -> new Period(closings, signatures, request);
            // What was signed for the first close does not carry over to the second.
            case PeriodEvent.Reopened reopened ->
                new Period(closings.subList(0, closings.size() - 1), with(reopened.month(), Map.of()), null);
            case PeriodEvent.ReopeningDropped dropped -> new Period(closings, signatures, null);
        };
    }

    private Map<YearMonth, Map<String, PeriodEvent.CheckSigned>> with(
            YearMonth month, Map<String, PeriodEvent.CheckSigned> ofMonth) {
        Map<YearMonth, Map<String, PeriodEvent.CheckSigned>> all = new HashMap<>(signatures);
        all.put(month, Map.copyOf(ofMonth));
        return all;
    }
}
