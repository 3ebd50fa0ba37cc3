package org.bandtrail.supplystock.spend;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bandtrail.supplystock.spend.Spend.InCurrency;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Spend over HTTP. All parts of an answer are read from one snapshot, so that rows, total and identity agree. */
@RestController
@Tag(name = "spend", description = "What was spent, at the actual cost of the reel or batch used")
class SpendController {
    private static final int MOST = 1_000;

    private final SpendBooks books;
    private final Clock clock;

    SpendController(SpendBooks books, Clock clock) {
        this.books = books;
        this.clock = clock;
    }

    /**
     * One page of the spend.
     *
     * @param by site, tree or item
     * @param after cursor of the page before
     * @param limit rows of a page, 1 to 1,000
     */
    @GetMapping("/spend")
    @Operation(summary = "Spend by site, tree or item, with the identity that no cent leaked")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    Spend spend(
            @RequestParam(defaultValue = "site") String by,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        SpendBy along = SpendBy.of(by);
        int most = Math.clamp(limit, 1, MOST);
        List<SpendRow> rows = books.rows(along, after, most + 1);
        boolean more = rows.size() > most;
        List<SpendRow> page = more ? rows.subList(0, most) : rows;
        List<InCurrency> currencies = currencies();
        InCurrency main = currencies.isEmpty() ? null : currencies.getFirst();
        return new Spend(
                along.name().toLowerCase(Locale.ROOT),
                page,
                more ? page.getLast().key() : null,
                main == null ? null : main.total(),
                main == null ? null : main.identity(),
                currencies.stream().skip(1).toList(),
                books.notReceived(),
                clock.instant());
    }

    private List<InCurrency> currencies() {
        Map<String, SpendRow> totals =
                books.totals().stream().collect(Collectors.toMap(SpendRow::currency, Function.identity()));
        return books.identities().stream()
                .map(each -> new InCurrency(
                        Objects.requireNonNull(totals.get(each.received().currency())), each))
                .toList();
    }
}
