package org.bandtrail.supplystock.spend;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.YearMonth;
import java.util.List;
import org.bandtrail.supplystock.periods.Period;
import org.jspecify.annotations.Nullable;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What stands behind the spend: the single charges, and the work done for it. */
@RestController
@Tag(name = "spend", description = "What was spent, as the ledger values it")
class SpendReasonsController {
    private static final int MOST = 1_000;
    private static final YearMonth BEGINNING = YearMonth.of(1970, 1);
    private final SpendLines lines;
    private final SiteCosts costs;
    private final Clock clock;

    SpendReasonsController(SpendLines lines, SiteCosts costs, Clock clock) {
        this.lines = lines;
        this.costs = costs;
        this.clock = clock;
    }

    /** One page of charges; every parameter but the page narrows them down. */
    @GetMapping("/spend/lines")
    @Operation(summary = "The single charges behind a figure of the spend")
    public Rows lines(
            @RequestParam @Nullable String account,
            @RequestParam @Nullable String tree,
            @RequestParam @Nullable String material,
            @RequestParam @Nullable String person,
            @RequestParam @Nullable String what,
            @RequestParam @Nullable YearMonth from,
            @RequestParam @Nullable YearMonth through,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        int most = Math.clamp(limit, 1, MOST);
        SpendLine.Asked asked = new SpendLine.Asked(account, tree, material, person, what, Months.of(from, through));
        List<SpendLines.Placed> rows = lines.page(asked, after, most + 1);
        boolean more = rows.size() > most;
        List<SpendLines.Placed> page = more ? rows.subList(0, most) : rows;
        return new Rows(
                page.stream().map(SpendLines.Placed::line).toList(),
                more ? page.getLast().cursor() : null);
    }

    /** What each site cost beside the work done there; without months from the beginning until now. */
    @GetMapping("/spend/work")
    @Operation(summary = "Cost per tree, per day a band hung and per thousand insects caught, by site")
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Costs work(@RequestParam @Nullable YearMonth from, @RequestParam @Nullable YearMonth through) {
        YearMonth last = through == null ? Period.monthOf(clock.instant()) : through;
        return new Costs(costs.between(from == null ? BEGINNING : from, last, clock.instant()), null);
    }

    record Rows(List<SpendLine> rows, @Nullable String next) {}

    record Costs(List<SiteCost> rows, @Nullable String next) {}
}
