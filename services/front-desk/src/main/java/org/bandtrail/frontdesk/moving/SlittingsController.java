package org.bandtrail.frontdesk.moving;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.DepotWork;
import org.bandtrail.frontdesk.neighbours.Moved;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.SupplyStock;
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

/** Slitting: the list, the form, and one slitting drawn across its width. */
@Controller
class SlittingsController {
    private static final int PAGE = 50;
    private final DepotWork depotWork;
    private final SupplyStock stock;

    SlittingsController(DepotWork depotWork, SupplyStock stock) {
        this.depotWork = depotWork;
        this.stock = stock;
    }

    @GetMapping("/slittings")
    String slittings(Model page, @RequestParam(defaultValue = "") String after) {
        Rows<Moved.Slitting> rows = depotWork.slittings(Map.of("after", after, "limit", PAGE));
        page.addAttribute("slittings", rows.rows());
        page.addAttribute("next", rows.next());
        return "slittings";
    }

    @GetMapping("/slittings.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        record Row(Moved.Slitting slitting, Moved.Made strip) {}
        List<Row> rows = new ArrayList<>();
        depotWork
                .allSlittings()
                .forEach(slitting -> slitting.strips().forEach(strip -> rows.add(new Row(slitting, strip))));
        return new Listing<Row>()
                .column("slitting_id", row -> row.slitting().slittingId())
                .column("wide_reel", row -> row.slitting().reelId())
                .column("length_mm", row -> row.slitting().lengthMm())
                .column("width_mm", row -> row.slitting().widthMm())
                .column("trim_mm", row -> row.slitting().trimMm())
                .column("slit_at", row -> row.slitting().slitAt())
                .column("strip", row -> row.strip().reelId())
                .column("material_code", row -> row.strip().materialCode())
                .column("strip_width_mm", row -> row.strip().widthMm())
                .column("cost_minor", row -> row.strip().cost().minor())
                .column("currency", row -> row.strip().cost().currency())
                .file("slittings", ending, rows);
    }

    @GetMapping("/slittings/new")
    String form(Model page, @RequestParam(defaultValue = "") String reel) {
        return form(page, Entered.fresh(Map.of("reelId", reel)));
    }

    @PostMapping("/slittings")
    String slit(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> depotWork
                        .tell()
                        .send(
                                "/slittings",
                                form.body()
                                        .text("slittingId", "reelId", "depotId")
                                        .length("length")
                                        .put("trim", form.has("trim") ? form.length("trim") : "0 mm")
                                        .put("strips", strips(form))
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return form(page, back.get());
        }
        String id = form.identity("slittingId");
        Soon.until(() -> depotWork.slitting(id).strips().stream()
                .allMatch(strip -> !stock.reel(strip.reelId()).places().isEmpty()));
        next.addFlashAttribute("done", "Reel " + form.identity("reelId") + " is slit. Label the strips before they leave the table.");
        return "redirect:/slittings/" + id;
    }

    /** Strips with an item; a strip without a label gets the wide reel's number and a letter. */
    private static List<Map<String, Object>> strips(Form form) {
        List<Map<String, Object>> strips = new ArrayList<>();
        form.lines("stripMaterial", "stripReel").forEach((line, parts) -> {
            String material = parts.getOrDefault("stripMaterial", "");
            if (!material.isEmpty()) {
                String label = parts.getOrDefault("stripReel", "");
                char letter = (char) ('A' + strips.size());
                strips.add(Map.of(
                        "materialCode",
                        material,
                        "reelId",
                        label.isEmpty() ? form.identity("reelId") + "-" + letter : label));
            }
        });
        return strips;
    }

    private String form(Model page, Entered entered) {
        page.addAttribute("items", stock.items().stream().filter(item -> item.widthMm() != null).toList());
        page.addAttribute("depots", stock.depots());
        page.addAttribute("entered", entered);
        return "slitting-new";
    }

    @GetMapping("/slittings/{slittingId}")
    String one(@PathVariable String slittingId, Model page) {
        Moved.Slitting slitting = depotWork.slitting(slittingId);
        page.addAttribute("slitting", slitting);
        page.addAttribute("drawing", AcrossWidth.of(slitting));
        return "slitting";
    }
}
