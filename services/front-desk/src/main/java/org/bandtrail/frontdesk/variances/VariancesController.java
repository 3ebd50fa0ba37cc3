package org.bandtrail.frontdesk.variances;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bandtrail.frontdesk.neighbours.money.Variances;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Price paid against price quoted, use against plan. */
@Controller
class VariancesController {
    private final Variances variances;

    VariancesController(Variances variances) {
        this.variances = variances;
    }

    @GetMapping("/variances")
    String variances(Model page) {
        List<Variances.Price> prices = variances.prices();
        List<Variances.Use> uses = variances.uses();
        Map<String, Long> price = new TreeMap<>();
        prices.forEach(row -> add(price, row.currency(), row.varianceMinor()));
        Map<String, Long> use = new TreeMap<>();
        uses.forEach(row -> add(use, row.currency(), row.varianceMinor()));
        page.addAttribute("prices", prices.reversed());
        page.addAttribute("uses", uses.reversed());
        page.addAttribute("priceTotals", price);
        page.addAttribute("useTotals", use);
        return "variances";
    }

    private static void add(Map<String, Long> totals, @Nullable String currency, @Nullable Long minor) {
        if (currency != null && minor != null) {
            totals.merge(currency, minor, Long::sum);
        }
    }

    @GetMapping("/variances/prices.{ending:csv|xlsx}")
    ResponseEntity<byte[]> prices(@PathVariable String ending) {
        return new Listing<Variances.Price>()
                .column("month", row -> row.month().toString())
                .column("material_code", Variances.Price::materialCode)
                .column("mm_or_pieces", Variances.Price::quantity)
                .column("currency", Variances.Price::currency)
                .column("paid_minor", Variances.Price::paidMinor)
                .column("standard_minor", Variances.Price::standardMinor)
                .column("variance_minor", Variances.Price::varianceMinor)
                .column("lines_by_quote", Variances.Price::byQuote)
                .column("lines", Variances.Price::lines)
                .file("price-variances", ending, variances.prices());
    }

    @GetMapping("/variances/uses.{ending:csv|xlsx}")
    ResponseEntity<byte[]> uses(@PathVariable String ending) {
        return new Listing<Variances.Use>()
                .column("month", row -> row.month().toString())
                .column("material_code", Variances.Use::materialCode)
                .column("settled_kits", Variances.Use::kits)
                .column("planned_mm_or_pieces", Variances.Use::planned)
                .column("used_mm_or_pieces", Variances.Use::used)
                .column("missing_mm_or_pieces", Variances.Use::missing)
                .column("currency", Variances.Use::currency)
                .column("variance_minor", Variances.Use::varianceMinor)
                .file("usage-variances", ending, variances.uses());
    }
}
