package org.bandtrail.supplystock.variances;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.YearMonth;
import java.util.List;
import java.util.function.Function;
import org.bandtrail.supplystock.spend.Months;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Variances over HTTP. */
@RestController
@Tag(name = "variances", description = "Price paid against price quoted, use against plan, by item and month")
final class VariancesController {
    private final Variances variances;

    VariancesController(Variances variances) {
        this.variances = variances;
    }

    @GetMapping("/variances/prices")
    @Operation(summary = "Purchase price variance by month and item, a page at a time; above zero is unfavourable")
    Rows<PriceVariance> prices(
            @RequestParam @Nullable YearMonth from,
            @RequestParam @Nullable YearMonth through,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        return page(variances.prices(Months.of(from, through)), PriceVariance::key, after, limit);
    }

    @GetMapping("/variances/uses")
    @Operation(
            summary = "Usage variance of settled kits by month and item, a page at a time; above zero is unfavourable")
    Rows<UsageVariance> uses(
            @RequestParam @Nullable YearMonth from,
            @RequestParam @Nullable YearMonth through,
            @RequestParam(defaultValue = "") String after,
            @RequestParam(defaultValue = "200") int limit) {
        return page(variances.uses(Months.of(from, through)), UsageVariance::key, after, limit);
    }

    private static <T> Rows<T> page(List<T> all, Function<T, String> key, String after, int limit) {
        int most = Math.clamp(limit, 1, 1_000);
        List<T> rows = all.stream()
                .filter(row -> key.apply(row).compareTo(after) > 0)
                .limit(most + 1L)
                .toList();
        boolean more = rows.size() > most;
        List<T> page = more ? rows.subList(0, most) : rows;
        return new Rows<>(page, more ? key.apply(page.getLast()) : null);
    }

    record Rows<T>(List<T> rows, @Nullable String next) {}
}
