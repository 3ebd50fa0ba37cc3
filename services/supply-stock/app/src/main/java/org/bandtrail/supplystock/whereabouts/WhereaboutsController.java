package org.bandtrail.supplystock.whereabouts;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Where everything is, over HTTP. By reel it is the list of reels itself. */
@RestController
@Tag(name = "whereabouts", description = "Where every metre and every piece is now")
final class WhereaboutsController {
    private final WhereaboutsReads reads;

    WhereaboutsController(WhereaboutsReads reads) {
        this.reads = reads;
    }

    @GetMapping("/trail")
    @Operation(summary = "The whole trail from supplier to disposal, by kind of material")
    Trail trail() {
        return reads.trail();
    }

    @GetMapping(value = "/whereabouts", params = "by=place")
    @Operation(summary = "What is at each place, a page at a time")
    Places byPlace(
            @RequestParam(required = false) @Nullable String after, @RequestParam(defaultValue = "200") int limit) {
        int size = Math.clamp(limit, 1, 1000);
        List<WhereaboutsReads.AtPlace> rows = reads.byPlace(after, size);
        return new Places(rows, rows.size() < size ? null : rows.getLast().place());
    }

    @GetMapping(value = "/whereabouts", params = "by=site")
    @Operation(summary = "What hangs on the trees of each site now")
    Sites bySite() {
        return new Sites(reads.bySite(), null);
    }

    record Places(
            List<WhereaboutsReads.AtPlace> rows, @Nullable String next) {}

    record Sites(
            List<WhereaboutsReads.AtSite> rows, @Nullable String next) {}
}
