package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
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

/** What stands aside, and setting aside and releasing by hand. */
@Controller
class AsideController {
    private final DepotWork depotWork;
    private final SupplyStock stock;

    AsideController(DepotWork depotWork, SupplyStock stock) {
        this.depotWork = depotWork;
        this.stock = stock;
    }

    @GetMapping("/set-aside")
    String aside(Model page) {
        return shown(page, Entered.fresh(Map.of()));
    }

    @GetMapping("/set-aside.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        return new Listing<Moved.Aside>()
                .column("depot_id", Moved.Aside::depotId)
                .column("holding", Moved.Aside::holding)
                .column("id", Moved.Aside::id)
                .column("material_code", Moved.Aside::materialCode)
                .column("mm_or_pieces", Moved.Aside::quantity)
                .column("why", Moved.Aside::why)
                .column("by", Moved.Aside::by)
                .column("since", Moved.Aside::since)
                .file("set-aside", ending, depotWork.aside());
    }

    @PostMapping("/set-aside")
    String setAside(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String depot = "depot:" + form.text("depotId");
        return moved(
                sent,
                true,
                () -> Label.read(form, stock, place -> place.equals(depot) || place.startsWith(depot + "/"), desk),
                new Turn(page, next, desk));
    }

    @PostMapping("/set-aside/release")
    String release(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        // The row says what it is, and all of the row is released.
        return moved(
                sent,
                false,
                () -> new Label(form.identity("label"), form.text("holding").equals("batch")),
                new Turn(page, next, desk));
    }

    /** What a form was sent from and what comes after it. */
    private record Turn(Model page, RedirectAttributes next, Desk desk) {}

    private String moved(MultiValueMap<String, String> sent, boolean away, Supplier<Label> read, Turn turn) {
        Form form = new Form(sent);
        List<String> moved = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Label label = read.get();
            Moved.Put put = depotWork
                    .tell()
                    .post(
                            away ? "/set-aside" : "/set-aside/release",
                            label.into(form.body().text("depotId", "mark", "reason")),
                            Moved.Put.class);
            moved.add(label.moved(put.quantity(), turn.desk()));
            TakeBack.offer(turn.next(), label, put.at(), "/set-aside");
        });
        if (back.isPresent()) {
            return shown(turn.page(), back.get());
        }
        String id = form.identity("label");
        Soon.until(() -> depotWork.aside().stream().anyMatch(each -> each.id().equals(id)) == away);
        turn.next().addFlashAttribute("done", moved.getFirst() + (away ? ": set aside." : ": released."));
        return "redirect:/set-aside";
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("aside", depotWork.aside());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "set-aside";
    }
}
