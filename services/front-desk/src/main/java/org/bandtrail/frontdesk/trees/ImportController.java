package org.bandtrail.frontdesk.trees;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.HttpEntity;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * A tree list in three steps: the file, what its columns mean, and the preview with every problem. The file travels in
 * the form between the steps, so nothing is kept here.
 */
@Controller
class ImportController {
    private final SiteInstalls installs;

    ImportController(SiteInstalls installs) {
        this.installs = installs;
    }

    @GetMapping("/import")
    String choose() {
        return "import";
    }

    @PostMapping("/import/columns")
    String columns(@RequestParam MultipartFile file, Model page) throws IOException {
        String text = TreeFile.text(file.getBytes());
        if (text.isBlank()) {
            page.addAttribute(
                    "problem",
                    Entered.unfit("The file is empty", "Choose a CSV file whose first line names the columns."));
            return "import";
        }
        String name = file.getOriginalFilename();
        return mapping(page, text, name == null ? "trees.csv" : name, Entered.fresh(Map.of()));
    }

    @PostMapping("/import/preview")
    String preview(
            @RequestParam String text,
            @RequestParam String fileName,
            @RequestParam MultiValueMap<String, String> sent,
            Model page) {
        Form form = new Form(sent);
        Map<String, Object> mapping = form.columns()
                .text("siteColumn", "siteId", "tagColumn", "speciesColumn", "girthColumn", "dbhColumn", "unit")
                .text("dateColumn", "aliveColumn", "aliveValue")
                .done();
        try {
            page.addAttribute(
                    "preview",
                    installs.tell()
                            .upload(
                                    "/tree-imports/preview",
                                    parts(text, fileName, mapping),
                                    Installs.ImportPreview.class));
        } catch (NeighbourRefused refused) {
            return mapping(page, text, fileName, Entered.again(sent, refused.problem()));
        }
        page.addAttribute("fileName", fileName);
        return "import-preview";
    }

    @PostMapping("/import/{importId}/store")
    String store(
            @PathVariable String importId, @RequestParam MultiValueMap<String, String> sent, RedirectAttributes next) {
        Installs.Stored stored = installs.tell()
                .post(
                        "/tree-imports/" + importId + "/store",
                        new Form(sent).body().put("onlyReady", true).done(),
                        Installs.Stored.class);
        next.addFlashAttribute(
                "done", stored.stored() == 1 ? "One tree is stored." : stored.stored() + " trees are stored.");
        return "redirect:/trees";
    }

    private String mapping(Model page, String text, String fileName, Entered entered) {
        page.addAttribute("columns", TreeFile.columns(text));
        page.addAttribute("text", text);
        page.addAttribute("fileName", fileName);
        page.addAttribute("sites", installs.sites());
        page.addAttribute("entered", entered);
        return "import-columns";
    }

    private static MultiValueMap<String, Object> parts(String text, String name, Map<String, Object> mapping) {
        HttpHeaders json = new HttpHeaders();
        json.setContentType(MediaType.APPLICATION_JSON);
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(text.getBytes(StandardCharsets.UTF_8)) {
            @Override
            public String getFilename() {
                return name;
            }
        });
        parts.add("mapping", new HttpEntity<>(mapping, json));
        return parts;
    }
}
