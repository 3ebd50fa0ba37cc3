package org.bandtrail.frontdesk.purchasing;

import java.util.Map;
import org.bandtrail.frontdesk.neighbours.depot.Purchasing;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Labels: the page on which reels are named, and the PDF. */
@Controller
class LabelsController {
    private final Purchasing purchasing;

    LabelsController(Purchasing purchasing) {
        this.purchasing = purchasing;
    }

    @GetMapping("/labels")
    String labels(
            Model page, @RequestParam(defaultValue = "") String reel, @RequestParam(defaultValue = "") String batch) {
        page.addAttribute("sheets", purchasing.sheets());
        page.addAttribute("reel", reel);
        page.addAttribute("batch", batch);
        return "labels";
    }

    /** The PDF; reels and batches are parted by commas, blanks or line ends, as a scanner leaves them. */
    @GetMapping("/labels.pdf")
    ResponseEntity<byte[]> print(
            @RequestParam(defaultValue = "") String delivery,
            @RequestParam(defaultValue = "") String reel,
            @RequestParam(defaultValue = "") String batch,
            @RequestParam(defaultValue = "a4-3x8") String sheet,
            @RequestParam(defaultValue = "1") String start) {
        byte[] labels = purchasing.labels(Map.of(
                "delivery", delivery, "reel", listed(reel), "batch", listed(batch), "sheet", sheet, "start", start));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename("labels.pdf")
                                .build()
                                .toString())
                .body(labels);
    }

    private static String listed(String ids) {
        return String.join(",", ids.strip().split("[\\s,;]+"));
    }
}
