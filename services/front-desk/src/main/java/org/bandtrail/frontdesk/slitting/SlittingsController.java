package org.bandtrail.frontdesk.slitting;

import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.depot.DepotWork;
import org.bandtrail.frontdesk.neighbours.depot.Moved;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** What was slit, as a list and one by one. */
@Controller
class SlittingsController {
    private static final int PAGE = 50;
    private final DepotWork depotWork;

    SlittingsController(DepotWork depotWork) {
        this.depotWork = depotWork;
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
        record Line(Moved.Slitting of, Moved.Made strip) {}
        return new Listing<Line>()
                .column("slitting_id", line -> line.of().slittingId())
                .column("slit_at", line -> line.of().slitAt())
                .column("by", line -> line.of().by())
                .column("wide_reel", line -> line.of().reelId())
                .column("wide_item", line -> line.of().materialCode())
                .column("length_mm", line -> line.of().lengthMm())
                .column("wide_width_mm", line -> line.of().widthMm())
                .column("trim_mm", line -> line.of().trimMm())
                .column("strip", line -> line.strip().reelId())
                .column("strip_item", line -> line.strip().materialCode())
                .column("strip_width_mm", line -> line.strip().widthMm())
                .column("strip_cost_minor", line -> line.strip().cost().minor())
                .column("currency", line -> line.strip().cost().currency())
                .file(
                        "slittings",
                        ending,
                        depotWork.allSlittings().stream()
                                .flatMap(of -> of.strips().stream().map(strip -> new Line(of, strip)))
                                .toList());
    }

    @GetMapping("/slittings/{slittingId}")
    String slitting(@PathVariable String slittingId, Model page) {
        Moved.Slitting slitting = depotWork.slitting(slittingId);
        page.addAttribute("slitting", slitting);
        page.addAttribute(
                "drawing",
                StripsDrawing.of(
                        slitting.widthMm(),
                        slitting.strips().stream()
                                .map(strip -> new StripsDrawing.Strip(strip.reelId(), strip.widthMm()))
                                .toList()));
        return "slitting";
    }
}
