package org.bandtrail.siteinstalls.depotstock;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.util.List;
import org.bandtrail.kernel.DepotId;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** What lies in the depots, over HTTP. */
@RestController
@Tag(name = "depot stock", description = "What supply-stock told of the depots, to plan with")
final class DepotStockController {
    private final DepotStock stock;
    private final Clock clock;

    DepotStockController(DepotStock stock, Clock clock) {
        this.stock = stock;
        this.clock = clock;
    }

    /** The depots by identity. */
    record Depots(List<DepotId> rows) {}

    /** What lies in one depot by material. */
    record Materials(List<MaterialThere> rows) {}

    @GetMapping("/depot-stock")
    @Operation(summary = "Depots in which something lies", description = "As heard from supply-stock, by identity")
    Depots depots() {
        return new Depots(stock.depots());
    }

    @GetMapping("/depot-stock/{depotId}")
    @Operation(
            summary = "What lies in a depot by material",
            description = "Lengths in millimetres, fasteners in pieces; free is what no kit keeps and nobody set aside")
    Materials materials(@PathVariable String depotId) {
        return new Materials(stock.materials(new DepotId(depotId), clock.instant()));
    }
}
