package org.bandtrail.supplystock.periods;

import java.time.Duration;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.bandtrail.eventstore.Projectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** All checks of a close, in their order. They look at read models, so these are let catch up first. */
@Component
class Checks {
    private static final Duration PATIENCE = Duration.ofSeconds(5);
    private final List<CloseCheck> checks;
    private final Periods periods;
    private final ObjectProvider<Projectors> projectors;

    Checks(List<CloseCheck> checks, Periods periods, ObjectProvider<Projectors> projectors) {
        this.checks = checks.stream()
                .sorted(Comparator.comparingInt(CloseCheck::order))
                .toList();
        this.periods = periods;
        this.projectors = projectors;
    }

    /** What every check finds now for this month; before that, whether the books have caught up with the events. */
    List<CheckFound> all(YearMonth month) {
        boolean caughtUp = projectors.getObject().caughtUp(PATIENCE);
        CheckFound books = new CheckFound(
                "books-up-to-date",
                caughtUp ? 0 : 1,
                caughtUp
                        ? "The books have caught up with everything that was stored."
                        : "The books are still reading what was stored. Look again in a minute.",
                caughtUp ? "" : "behind");
        return Stream.concat(Stream.of(books), checks.stream().map(check -> check.look(month)))
                .toList();
    }

    /** What one check finds now. */
    CheckFound one(YearMonth month, String name) {
        return all(month).stream()
                .filter(found -> found.check().equals(name))
                .findFirst()
                .orElseThrow(() -> new NoSuch("check", name));
    }

    /** The checks with their signatures. */
    List<PeriodRow.Check> withSignatures(YearMonth month) {
        Map<String, PeriodRow.Signature> signatures = periods.signatures(month).stream()
                .collect(Collectors.toMap(PeriodRow.Signature::check, Function.identity()));
        return all(month).stream()
                .map(found -> {
                    PeriodRow.Signature signature = signatures.get(found.check());
                    boolean holds = signature != null && signature.fingerprint().equals(found.fingerprint());
                    return new PeriodRow.Check(
                            found.check(), found.open(), found.sentence(), found.clean() || holds, signature);
                })
                .toList();
    }
}
