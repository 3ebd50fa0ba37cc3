package org.bandtrail.siteinstalls.hazards;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The kinds of hazards over HTTP. */
@RestController
@Tag(name = "hazards", description = "What can hurt somebody on a site")
final class HazardController {
    private final HazardKinds kinds;

    HazardController(HazardKinds kinds) {
        this.kinds = kinds;
    }

    @GetMapping("/hazard-kinds")
    @Operation(summary = "All kinds with their cautions, in the order in which they are offered")
    Kinds all() {
        return new Kinds(kinds.all());
    }

    record Kinds(List<HazardKind> rows) {}
}
