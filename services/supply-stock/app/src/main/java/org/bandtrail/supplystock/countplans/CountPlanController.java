package org.bandtrail.supplystock.countplans;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.bandtrail.kernel.Money;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The plan of counts over HTTP. Days are UTC days. */
@RestController
@Tag(name = "count plan", description = "What to count when, by value class")
final class CountPlanController {
    private final CountPlans plans;
    private final Clock clock;

    CountPlanController(CountPlans plans, Clock clock) {
        this.plans = plans;
        this.clock = clock;
    }

    @GetMapping("/count-plan")
    @Operation(summary = "Every place and item in stock, the most urgent count first")
    Rows plan(
            @RequestParam(required = false) @Nullable String depot,
            @RequestParam(defaultValue = "false") boolean due,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(defaultValue = "100") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<DueCount> rows = plans.page(today(), depot, due, after, size);
        return new Rows(rows, rows.size() < size ? null : rows.getLast().key());
    }

    @GetMapping("/count-plan/classes")
    @Operation(summary = "Every item with its value and class, the dearest first")
    Classes classes() {
        List<InClass> rows = plans.classes(today()).stream()
                .map(each -> new InClass(
                        each.item().material(),
                        Money.of(each.item().valueMinor(), each.item().currency()),
                        each.valueClass(),
                        each.upToPermille()))
                .toList();
        return new Classes(rows, null);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }

    record Rows(List<DueCount> rows, @Nullable String next) {}

    record Classes(List<InClass> rows, @Nullable String next) {}

    /** @param upToPermille share of the value of all items up to and with this one */
    record InClass(String materialCode, Money value, ValueClass valueClass, int upToPermille) {}
}
