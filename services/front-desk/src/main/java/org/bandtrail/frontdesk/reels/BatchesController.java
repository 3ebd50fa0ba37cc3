package org.bandtrail.frontdesk.reels;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.trail.Drawn;
import org.bandtrail.frontdesk.trail.Flow;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Batches of fasteners: the list, one batch, and receiving one. */
@Controller
class BatchesController {
    private static final int PAGE = 100;
    private final SupplyStock stock;

    BatchesController(SupplyStock stock) {
        this.stock = stock;
    }

    @GetMapping("/batches")
    String batches(
            Model page, @RequestParam(defaultValue = "") String q, @RequestParam(defaultValue = "") String after) {
        Map<String, Object> asked = new HashMap<>(Map.of("q", q, "after", after, "limit", PAGE));
        Rows<Stock.Batch> batches = stock.batches(asked);
        page.addAttribute("batches", batches.rows());
        page.addAttribute("next", batches.next());
        page.addAttribute("q", q);
        return "batches";
    }

    @GetMapping("/batches.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Stock.Batch>()
                .column("batch_id", Stock.Batch::batchId)
                .column("material_code", Stock.Batch::materialCode)
                .column("received_pieces", Stock.Batch::receivedPieces)
                .column("in_depot_pieces", Stock.Batch::inDepotPieces)
                .column("with_crew_pieces", Stock.Batch::withCrewPieces)
                .column("on_tree_pieces", Stock.Batch::onTreePieces)
                .column("in_bag_pieces", Stock.Batch::inBagPieces)
                .column("disposed_pieces", Stock.Batch::disposedPieces)
                .column("missing_pieces", Stock.Batch::missingPieces)
                .column("written_off_pieces", Stock.Batch::writtenOffPieces)
                .file("fasteners", ending, stock.allBatches(Map.of()));
    }

    @GetMapping("/batches/{batchId}")
    String batch(@PathVariable String batchId, Model page, @ModelAttribute("desk") Desk desk) {
        Stock.WholeBatch whole = stock.batch(batchId);
        page.addAttribute("whole", whole);
        page.addAttribute("batch", whole.balance());
        page.addAttribute("drawn", Drawn.one(Flow.of(whole.balance()), desk.figures()));
        return "batch";
    }

    @GetMapping("/batches/new")
    String receive(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/batches")
    String received(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> stock.tell()
                        .send(
                                "/batches",
                                form.body()
                                        .text("batchId", "materialCode", "depotId")
                                        .whole("pieces")
                                        .money("cost")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        String batchId = form.identity("batchId");
        Soon.readable(() -> stock.batch(batchId));
        next.addFlashAttribute("done", "Batch " + batchId + " is received with " + form.text("pieces") + " pieces.");
        return "redirect:/batches/" + batchId;
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("items", stock.items());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "batch-new";
    }
}
