package org.bandtrail.supplystock.reorderpoints;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Reorder points over HTTP. */
@RestController
@Tag(name = "reorder points", description = "When to order what, with formula and inputs")
final class ReorderPointController {
    private static final int MOST = 500;

    private final ReorderPoints points;
    private final Clock clock;

    ReorderPointController(ReorderPoints points, Clock clock) {
        this.points = points;
        this.clock = clock;
    }

    @GetMapping("/reorder-points")
    @Operation(summary = "Reorder point of each item in each depot, derived from what was used")
    ReorderPoints.Page list(
            @RequestParam(defaultValue = "") String after, @RequestParam(defaultValue = "200") int limit) {
        LocalDate today = clock.instant().atOffset(ZoneOffset.UTC).toLocalDate();
        return points.page(after, Math.clamp(limit, 1, MOST), today);
    }
}
