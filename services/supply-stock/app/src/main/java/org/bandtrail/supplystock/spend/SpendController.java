package org.bandtrail.supplystock.spend;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.supplystock.spend.Spend.InCurrency;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Spend over HTTP. All parts of an answer are read from one snapshot, so that rows, total and identity agree. */
@RestController
@Tag(name = "spend", description = "What was spent, as the ledger values it")
class SpendController {
    private static final int MOST = 1_000;

    private final SpendBooks books;
    private final GrantSpend byGrant;
    private final Clock clock;

    SpendController(SpendBooks books, GrantSpend byGrant, Clock clock) {
        this.books = books;
        this.byGrant = byGrant;
        this.clock = clock;
    }

    /**
     * One page of the spend.
     *
     * @param by site, tree, item, crew, person, month or grant
     * @param from first month, without it from the beginning
     * @param through last month, without it until now; total is over the same months, the identity always over all
     * @param after cursor of the page before
     * @param limit rows of a page, 1 to 1,000
     */
    @GetMapping("/spend")
    @Operation(
            summary = "Spend by site, tree, item, crew, person, month or grant, with the identity that no cent leaked")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Spend spend(
            @RequestParam(defaultValue = "site") String by,
            @RequestParam @Nullable YearMonth from,
            @RequestParam @Nullable YearMonth through,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        SpendBy along = SpendBy.of(by);
        Months months = Months.of(from, through);
        int most = Math.clamp(limit, 1, MOST);
        List<SpendRow> rows = along == SpendBy.GRANT
                ? byGrant.rows(months).stream()
                        .filter(row -> row.key().compareTo(after) > 0)
                        .limit(most + 1L)
                        .toList()
                : books.rows(along, months, after, most + 1);
        boolean more = rows.size() > most;
        List<SpendRow> page = more ? rows.subList(0, most) : rows;
        List<InCurrency> currencies = currencies(months);
        InCurrency main = currencies.isEmpty() ? null : currencies.getFirst();
        return new Spend(
                along.word(),
                page,
                more ? page.getLast().key() : null,
                main == null ? null : main.total(),
                main == null ? null : main.identity(),
                currencies.stream().skip(1).toList(),
                books.notReceived(),
                clock.instant());
    }

    @GetMapping("/spend/grants")
    @Operation(summary = "What was spent of each grant so far, in its own currency")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public OfGrants grants() {
        return new OfGrants(byGrant.ofGrants(), null);
    }

    private List<InCurrency> currencies(Months months) {
        Map<String, SpendRow> totals =
                books.totals(months).stream().collect(Collectors.toMap(SpendRow::currency, Function.identity()));
        return books.identities().stream()
                .map(each -> new InCurrency(
                        Objects.requireNonNull(totals.get(each.received().currency())), each))
                .toList();
    }

    record OfGrants(List<GrantSpend.OfGrant> rows, @Nullable String next) {}
}
