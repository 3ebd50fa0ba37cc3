package org.bandtrail.siteinstalls.species;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.bandtrail.eventexchange.entry.NoSuch;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** What the house knows about species, over HTTP. */
@RestController
@Tag(name = "species", description = "Host trees, look-alikes and pests with their EPPO codes and where each is from")
final class SpeciesController {
    private final SpeciesBook book;

    SpeciesController(SpeciesBook book) {
        this.book = book;
    }

    @GetMapping("/species")
    @Operation(summary = "The whole book: version, source, pests and species")
    SpeciesBook all() {
        return book;
    }

    @GetMapping("/species/{code}")
    @Operation(summary = "One kind of tree by its EPPO code")
    Species one(@PathVariable EppoCode code) {
        return book.find(code).orElseThrow(() -> new NoSuch("species", code));
    }
}
