package org.bandtrail.frontdesk.trace;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.depot.Traced;
import org.bandtrail.frontdesk.neighbours.depot.Tracing;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Scanning something, and the way it came and went. */
@Controller
class TraceController {
    private static final int PAGE = 100;
    private final Tracing tracing;

    TraceController(Tracing tracing) {
        this.tracing = tracing;
    }

    @GetMapping("/trace")
    String find(@RequestParam(defaultValue = "") String find, Model page, RedirectAttributes next) {
        List<Traced.Found> found = find.isBlank() ? List.of() : tracing.found(find.strip());
        if (found.size() == 1) {
            next.addAttribute("id", found.getFirst().id());
            String supplier = found.getFirst().supplierId();
            if (supplier != null) {
                next.addAttribute("supplier", supplier);
            }
            return "redirect:/trace/" + found.getFirst().what();
        }
        page.addAttribute("find", find);
        page.addAttribute("found", found);
        return "trace";
    }

    @GetMapping("/trace/{what:lot|reel|batch|tree|bag|load}")
    String trace(
            @PathVariable String what,
            @RequestParam String id,
            @RequestParam(defaultValue = "") String supplier,
            @RequestParam(defaultValue = "") String kind,
            @RequestParam(defaultValue = "") String after,
            Model page) {
        Traced.Found of = of(what, id, supplier);
        Traced.Trace trace = tracing.trace(of);
        Rows<Traced.Part> parts = tracing.parts(of, null, PAGE);
        Rows<Traced.At> places =
                trace.stations().isEmpty() ? new Rows<>(List.of(), null) : tracing.places(of, kind, after, PAGE);
        page.addAttribute("trace", trace);
        page.addAttribute("parts", parts.rows());
        page.addAttribute("more", parts.next() != null);
        page.addAttribute("places", places.rows());
        page.addAttribute("next", places.next());
        page.addAttribute("kind", kind);
        page.addAttribute("drawing", PathDrawing.of(parts.rows(), trace.holdings()));
        page.addAttribute("words", new Words());
        return "trace-of";
    }

    private static Traced.Found of(String what, String id, String supplier) {
        return new Traced.Found(what, id, supplier.isBlank() ? null : supplier.strip());
    }

    /** Words for the page. */
    public static final class Words {
        Words() {}

        /** The word of a kind of place. */
        public String station(String kind) {
            return Stations.word(kind);
        }
    }

    @GetMapping("/trace/{what:lot|reel|batch|tree|bag|load}/holdings.{ending:csv|xlsx}")
    ResponseEntity<byte[]> holdings(
            @PathVariable String what,
            @RequestParam String id,
            @RequestParam(defaultValue = "") String supplier,
            @PathVariable String ending) {
        return new Listing<Traced.Part>()
                .column("reel_or_batch", Traced.Part::holding)
                .column("id", Traced.Part::id)
                .column("material_code", Traced.Part::materialCode)
                .column("lot", Traced.Part::lot)
                .column("slit_from", Traced.Part::madeFrom)
                .column("delivery_id", Traced.Part::deliveryId)
                .column("order_id", Traced.Part::purchaseId)
                .column("received_mm_or_pieces", Traced.Part::received)
                .column("set_aside", Traced.Part::setAside)
                .column("in_depot", Traced.Part::inDepot)
                .column("in_vehicles_or_on_the_way", Traced.Part::inVehiclesOrTransit)
                .column("with_crew", Traced.Part::withCrew)
                .column("on_tree", Traced.Part::onTree)
                .column("in_bag", Traced.Part::inBag)
                .column("disposed", Traced.Part::disposed)
                .column("slit", Traced.Part::slit)
                .column("missing", Traced.Part::missing)
                .column("written_off", Traced.Part::writtenOff)
                .file("trace-holdings", ending, tracing.allParts(of(what, id, supplier)));
    }

    @GetMapping("/trace/{what:lot|reel|batch|tree|bag|load}/places.{ending:csv|xlsx}")
    ResponseEntity<byte[]> places(
            @PathVariable String what,
            @RequestParam String id,
            @RequestParam(defaultValue = "") String supplier,
            @PathVariable String ending) {
        return placesListing().file("trace-places", ending, tracing.allPlaces(of(what, id, supplier)));
    }

    private static Listing<Traced.At> placesListing() {
        return new Listing<Traced.At>()
                .column("place", Traced.At::place)
                .column("site_id", Traced.At::siteId)
                .column("reel_or_batch", Traced.At::holding)
                .column("id", Traced.At::id)
                .column("material_code", Traced.At::materialCode)
                .column("lot", Traced.At::lot)
                .column("quantity_now", Traced.At::quantity)
                .column("unit", Traced.At::unit)
                .column("first_there_at", Traced.At::firstAt)
                .column("told_by", Traced.At::by);
    }
}
