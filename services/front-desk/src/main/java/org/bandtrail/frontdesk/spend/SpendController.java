package org.bandtrail.frontdesk.spend;

import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.Books;
import org.bandtrail.frontdesk.neighbours.Installs;
import org.bandtrail.frontdesk.neighbours.NeighbourSilent;
import org.bandtrail.frontdesk.neighbours.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.SupplyStock;
import org.bandtrail.frontdesk.wording.Listing;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Spend per site. */
@Controller
class SpendController {
    private static final Logger LOG = LoggerFactory.getLogger(SpendController.class);
    private final SupplyStock stock;
    private final SiteInstalls installs;

    SpendController(SupplyStock stock, SiteInstalls installs) {
        this.stock = stock;
        this.installs = installs;
    }

    @GetMapping("/spend")
    String spend(Model page) {
        Books.Spend spend = stock.spend("site");
        page.addAttribute("spend", spend);
        page.addAttribute(
                "rows",
                spend.rows().stream()
                        .sorted(Comparator.comparingLong(Books.SpendLine::totalMinor)
                                .reversed())
                        .toList());
        page.addAttribute(
                "most",
                Math.max(
                        1,
                        spend.rows().stream()
                                .mapToLong(Books.SpendLine::totalMinor)
                                .max()
                                .orElse(1)));
        try {
            page.addAttribute("sites", names());
            page.addAttribute("namesMissing", false);
        } catch (NeighbourSilent silent) {
            LOG.warn("Spend is shown without site names: {}", silent.getMessage());
            page.addAttribute("sites", Map.of());
            page.addAttribute("namesMissing", true);
        }
        return "spend";
    }

    @GetMapping("/spend.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Books.SpendLine>()
                .column("site_id", Books.SpendLine::siteId)
                .column("currency", Books.SpendLine::currency)
                .column("tape_minor", Books.SpendLine::tapeMinor)
                .column("mesh_minor", Books.SpendLine::meshMinor)
                .column("fastener_minor", Books.SpendLine::fastenerMinor)
                .column("total_minor", Books.SpendLine::totalMinor)
                .column("tape_mm", Books.SpendLine::tapeMm)
                .column("mesh_mm", Books.SpendLine::meshMm)
                .column("pieces", Books.SpendLine::pieces)
                .file("spend-per-site", ending, stock.spend("site").rows());
    }

    private Map<String, String> names() {
        return installs.sites().stream().collect(Collectors.toMap(Installs.Site::siteId, Installs.Site::name));
    }
}
