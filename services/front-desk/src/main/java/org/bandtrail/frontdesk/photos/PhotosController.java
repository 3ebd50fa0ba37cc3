package org.bandtrail.frontdesk.photos;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Photos of trees, bands and sites. */
@Controller
class PhotosController {
    private static final Duration KEPT = Duration.ofMinutes(10);
    private final TreeCare care;

    PhotosController(TreeCare care) {
        this.care = care;
    }

    @GetMapping("/photos/{photoId}.jpg")
    ResponseEntity<byte[]> picture(@PathVariable String photoId) {
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_JPEG)
                .cacheControl(CacheControl.maxAge(KEPT).cachePrivate())
                .body(care.jpeg(photoId));
    }

    @PostMapping("/photos")
    String attach(
            @RequestParam MultipartFile file, @RequestParam MultiValueMap<String, String> sent, RedirectAttributes next)
            throws IOException {
        Form form = new Form(sent);
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(file.getBytes()) {
            @Override
            public String getFilename() {
                return "photo";
            }
        });
        for (String field : List.of("commandId", "of", "subject")) {
            parts.add(field, form.text(field));
        }
        try {
            care.attach(parts);
            next.addFlashAttribute("done", "The photo is stored, without place and device.");
        } catch (NeighbourRefused refused) {
            next.addFlashAttribute("photoProblem", refused.problem());
        }
        return "redirect:" + page(form);
    }

    @PostMapping("/photos/{photoId}/erase")
    String erase(
            @PathVariable String photoId, @RequestParam MultiValueMap<String, String> sent, RedirectAttributes next) {
        Form form = new Form(sent);
        care.tell()
                .send("/photos/" + photoId + "/erase", form.body().text("why").done());
        next.addFlashAttribute("done", "The picture is erased. That there was one stays, with your reason.");
        return "redirect:" + page(form);
    }

    /** The page of what the photo shows; never an address that came with the form. */
    private static String page(Form form) {
        String subject = form.identity("subject").replaceAll("[^A-Z0-9-]", "");
        return switch (form.text("of")) {
            case "band" -> "/bands/" + subject;
            case "site" -> "/sites/" + subject;
            default -> "/trees/" + subject;
        };
    }
}
