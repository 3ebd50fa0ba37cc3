package org.bandtrail.supplystock.journal;

import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The rules of the organisation's accounts.
 *
 * @param begins months in which a mapping begins
 */
public record Chart(Set<YearMonth> begins) {
    /** Nothing is mapped yet. */
    public static final Chart EMPTY = new Chart(Set.of());

    /** What every mapping must name, so that every posting finds an account. */
    static final List<String> GENERAL = List.of("stock", "site", "written-off", "written-down", "slit", "supplier");

    private static final Pattern OURS = Pattern.compile(
            "stock(:(TAPE|MESH|FASTENER))?|site(:[A-Z0-9][A-Z0-9-]{0,39})?|written-off|written-down|slit|supplier");

    /** Keeps its own copy. */
    public Chart {
        begins = Set.copyOf(begins);
    }

    /**
     * What a command makes happen.
     *
     * @throws ChartRefused if the wish cannot be granted
     */
    public List<ChartEvent> decide(ChartCommand command) {
        return switch (command) {
            case ChartCommand.MapAccounts map -> {
                // A first mapping may reach back: before it, no journal was ever exported.
                if (!begins.isEmpty()
                        && map.closedThrough() != null
                        && !map.from().isAfter(map.closedThrough())) {
                    throw new ChartRefused.AccountsOfClosedMonth(map.from(), map.closedThrough());
                }
                checked(map.accounts());
                yield List.of(new ChartEvent.Mapped(map.books(), map.from(), map.accounts(), map.by(), map.occurred()));
            }
        };
    }

    private static void checked(List<ChartAccount> accounts) {
        Set<String> named = new HashSet<>();
        for (ChartAccount account : accounts) {
            if (!OURS.matcher(account.ours()).matches()) {
                throw new ChartRefused.AccountNotOurs(account.ours());
            }
            if (account.number().isBlank() || account.name().isBlank()) {
                throw new ChartRefused.AccountIncomplete(account);
            }
            if (!named.add(account.ours())) {
                throw new ChartRefused.AccountMappedTwice(account.ours());
            }
        }
        Set<String> missing = new TreeSet<>(GENERAL);
        missing.removeAll(named);
        if (!missing.isEmpty()) {
            throw new ChartRefused.AccountsMissing(missing);
        }
    }

    /** The accounts after an event. */
    public Chart evolve(ChartEvent event) {
        return switch (event) {
            case ChartEvent.Mapped mapped -> {
                Set<YearMonth> more = new HashSet<>(begins);
                more.add(mapped.from());
                yield new Chart(more);
            }
        };
    }
}
