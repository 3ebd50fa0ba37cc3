package org.bandtrail.frontdesk.cutplans;

import java.util.Map;
import org.bandtrail.frontdesk.neighbours.field.CutPlanning;
import org.bandtrail.frontdesk.pages.Desk;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** A cut plan on paper: the sheet to cut by, and a label for each tree. */
@Controller
class CutPapersController {
    private final CutPlanning planning;

    CutPapersController(CutPlanning planning) {
        this.planning = planning;
    }

    @GetMapping("/cut-plans/{planId}/sheet.pdf")
    ResponseEntity<byte[]> sheet(@PathVariable String planId, @ModelAttribute("desk") Desk desk) {
        return pdf("cut-sheet-" + planId, planning.paper(planId, "sheet", units(desk)));
    }

    @GetMapping("/cut-plans/{planId}/labels.pdf")
    ResponseEntity<byte[]> labels(
            @PathVariable String planId,
            @RequestParam(defaultValue = "1") int start,
            @ModelAttribute("desk") Desk desk) {
        Map<String, Object> asked = Map.of("units", desk.metric() ? "si" : "us", "start", start);
        return pdf("tree-labels-" + planId, planning.paper(planId, "labels", asked));
    }

    private static Map<String, Object> units(Desk desk) {
        return Map.of("units", desk.metric() ? "si" : "us");
    }

    private static ResponseEntity<byte[]> pdf(String name, byte[] file) {
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(name + ".pdf")
                                .build()
                                .toString())
                .body(file);
    }
}
