package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
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

/** Transfers: the list, sending one, one transfer, confirming its arrival, calling it off. */
@Controller
class TransfersController {
    private static final int PAGE = 50;
    private final DepotWork depotWork;
    private final SupplyStock stock;

    TransfersController(DepotWork depotWork, SupplyStock stock) {
        this.depotWork = depotWork;
        this.stock = stock;
    }

    @GetMapping("/transfers")
    String transfers(Model page, @RequestParam(defaultValue = "") String after) {
        Rows<Moved.Transfer> rows = depotWork.transfers(Map.of("after", after, "limit", PAGE));
        page.addAttribute("transfers", rows.rows());
        page.addAttribute("next", rows.next());
        page.addAttribute(
                "open",
                depotWork
                        .transfers(Map.of("state", "on-its-way", "limit", PAGE))
                        .rows());
        return "transfers";
    }

    @GetMapping("/transfers.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        record Row(Moved.Transfer transfer, Moved.Line line) {}
        List<Row> rows = new ArrayList<>();
        depotWork
                .allTransfers()
                .forEach(transfer -> transfer.lines().forEach(line -> rows.add(new Row(transfer, line))));
        return new Listing<Row>()
                .column("transfer_id", row -> row.transfer().transferId())
                .column("source", row -> row.transfer().source())
                .column("target", row -> row.transfer().target())
                .column("carrier", row -> row.transfer().carrier())
                .column("state", row -> row.transfer().state())
                .column("sent_at", row -> row.transfer().sentAt())
                .column("ended_at", row -> row.transfer().endedAt())
                .column("holding", row -> row.line().holding())
                .column("id", row -> row.line().id())
                .column("sent_mm_or_pieces", row -> row.line().sent())
                .column("arrived_mm_or_pieces", row -> row.line().arrived())
                .file("transfers", ending, rows);
    }

    @GetMapping("/transfers/new")
    String sending(Model page) {
        return form(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/transfers")
    String send(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Scanned scanned = Scanned.read(form, stock, form.text("from"), desk);
            depotWork
                    .tell()
                    .send(
                            "/transfers",
                            scanned.into(form.body().text("transferId", "from", "to", "carrier"))
                                    .happened(desk.days())
                                    .done());
        });
        if (back.isPresent()) {
            return form(page, back.get());
        }
        String id = form.identity("transferId");
        Soon.readable(() -> depotWork.transfer(id));
        next.addFlashAttribute("done", "Transfer " + id + " is on its way.");
        return "redirect:/transfers/" + id;
    }

    private String form(Model page, Entered entered) {
        page.addAttribute("depots", stock.depots());
        page.addAttribute("vehicles", depotWork.vehicles());
        page.addAttribute("entered", entered);
        return "transfer-new";
    }

    @GetMapping("/transfers/{transferId}")
    String one(@PathVariable String transferId, Model page) {
        return shown(transferId, page, Entered.fresh(Map.of()));
    }

    @PostMapping("/transfers/{transferId}/arrive")
    String arrive(
            @PathVariable String transferId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Arrived.askAboutSilence(form, depotWork.transfer(transferId).lines());
            depotWork
                    .tell()
                    .send(
                            "/transfers/" + transferId + "/arrive",
                            form.body()
                                    .put("reels", Arrived.reels(form))
                                    .put("batches", Arrived.batches(form))
                                    .happened(desk.days())
                                    .done());
        });
        if (back.isPresent()) {
            return shown(transferId, page, back.get());
        }
        Soon.until(() -> !depotWork.transfer(transferId).onItsWay());
        next.addFlashAttribute("done", "The arrival of " + transferId + " is confirmed.");
        return "redirect:/transfers/" + transferId;
    }

    @PostMapping("/transfers/{transferId}/call-off")
    String callOff(
            @PathVariable String transferId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/transfers/" + transferId + "/call-off",
                                new Form(sent).body().text("reason").done()));
        if (back.isPresent()) {
            return shown(transferId, page, back.get());
        }
        Soon.until(() -> !depotWork.transfer(transferId).onItsWay());
        next.addFlashAttribute(
                "done", "Transfer " + transferId + " is called off; everything is back where it started.");
        return "redirect:/transfers/" + transferId;
    }

    private String shown(String transferId, Model page, Entered entered) {
        page.addAttribute("transfer", depotWork.transfer(transferId));
        page.addAttribute("entered", entered);
        return "transfer";
    }
}
