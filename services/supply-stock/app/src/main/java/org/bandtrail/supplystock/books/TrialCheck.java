package org.bandtrail.supplystock.books;

import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;
import org.bandtrail.supplystock.periods.CheckFound;
import org.bandtrail.supplystock.periods.CloseCheck;
import org.springframework.stereotype.Component;

/** The months add up: no cent leaked until the end of this one, and all months together give the running balances. */
@Component
final class TrialCheck implements CloseCheck {
    private static final int AFTER_THE_AUDIT = 60;
    private final Trials trials;

    TrialCheck(Trials trials) {
        this.trials = trials;
    }

    @Override
    public String name() {
        return "trial";
    }

    @Override
    public int order() {
        return AFTER_THE_AUDIT;
    }

    @Override
    public CheckFound look(YearMonth month) {
        Stream<String> money = trials.law(month.toString()).stream()
                .filter(law -> law.differenceMinor() != 0)
                .map(Trial.Law::toString);
        Stream<String> balances = trials.recount().stream().map(Trials.Differing::toString);
        List<String> open = Stream.concat(money, balances).toList();
        return CheckFound.of(
                name(),
                open,
                "Opening, in, out and adjustments give the closing of every item at every place, and no cent leaked.",
                "Items, places or currencies whose months do not add up: %d. Rebuild the ledger and look again.");
    }
}
