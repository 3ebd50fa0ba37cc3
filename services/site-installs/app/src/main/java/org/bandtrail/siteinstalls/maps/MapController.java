package org.bandtrail.siteinstalls.maps;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Maps over HTTP. */
@RestController
@Tag(name = "maps", description = "What stands where")
final class MapController {
    private static final int E7 = 7;
    private static final BigDecimal QUARTER = BigDecimal.valueOf(90);
    private final Maps maps;
    private final Clock clock;

    MapController(Maps maps, Clock clock) {
        this.maps = maps;
        this.clock = clock;
    }

    @GetMapping("/map")
    @Operation(
            summary = "Sites and trees in a box",
            description = "Degrees, WGS 84; without a box the one around everything. Many trees come gathered on a"
                    + " grid. on is the day for bands that must come off; today in UTC if not given.")
    MapView map(
            @RequestParam(required = false) @Nullable BigDecimal south,
            @RequestParam(required = false) @Nullable BigDecimal west,
            @RequestParam(required = false) @Nullable BigDecimal north,
            @RequestParam(required = false) @Nullable BigDecimal east,
            @RequestParam(required = false) @Nullable LocalDate on) {
        LocalDate day = on == null ? LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC) : on;
        if (south == null && west == null && north == null && east == null) {
            return maps.view(null, day);
        }
        if (south == null || west == null || north == null || east == null) {
            throw new IllegalArgumentException("A box has four sides. Give south, west, north and east, or none.");
        }
        if (south.compareTo(north) > 0 || west.compareTo(east) > 0) {
            throw new IllegalArgumentException("Box south [%s] north [%s] west [%s] east [%s] is upside down."
                    .formatted(south, north, west, east));
        }
        return maps.view(new Maps.BoxE7(e7(south, 1), e7(west, 2), e7(north, 1), e7(east, 2)), day);
    }

    /** A side beyond the earth is taken as its edge: zooming out must not end in an error. */
    private static int e7(BigDecimal degrees, int quarters) {
        BigDecimal most = QUARTER.multiply(BigDecimal.valueOf(quarters));
        return degrees.min(most)
                .max(most.negate())
                .movePointRight(E7)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }
}
