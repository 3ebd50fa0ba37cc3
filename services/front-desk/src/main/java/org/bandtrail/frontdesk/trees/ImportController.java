package org.bandtrail.frontdesk.trees;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.core.io.ByteArrayResource;
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
 * A tree list in three steps: the file, what its columns mean, and the preview with every problem. Site-installs keeps
 * the file for a day between the steps, so nothing is kept here.
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
        String sentName = file.getOriginalFilename();
        String name = sentName == null || sentName.isBlank() ? "trees.csv" : sentName;
        try {
            Installs.ImportFile kept = installs.tell()
                    .upload("/tree-imports/files", part(file.getBytes(), name), Installs.ImportFile.class);
            page.addAttribute("notes", kept.notes());
            return mapping(page, kept.fileId(), kept.columns(), name, Entered.fresh(kept.proposal()));
        } catch (NeighbourRefused refused) {
            page.addAttribute("problem", refused.problem());
            return "import";
        }
    }

    @PostMapping("/import/preview")
    String preview(
            @RequestParam String fileId,
            @RequestParam String fileName,
            @RequestParam(name = "columnName") List<String> columns,
            @RequestParam MultiValueMap<String, String> sent,
            Model page) {
        Map<String, Object> mapping = new Form(sent)
                .columns()
                .text("siteColumn", "siteId", "tagColumn", "speciesColumn", "girthColumn", "dbhColumn", "unit")
                .text("dateColumn", "aliveColumn", "aliveValue", "genusColumn", "codeColumn", "latColumn", "lonColumn")
                .text("heightColumn", "noteColumn")
                .done();
        try {
            page.addAttribute(
                    "preview",
                    installs.tell()
                            .post(
                                    "/tree-imports/files/%s/preview".formatted(fileId),
                                    mapping,
                                    Installs.ImportPreview.class));
        } catch (NeighbourRefused refused) {
            return mapping(page, fileId, columns, fileName, Entered.again(sent, refused.problem()));
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
        if (!stored.finished()) {
            return "redirect:/import/" + importId;
        }
        next.addFlashAttribute(
                "done", stored.stored() == 1 ? "One tree is stored." : stored.stored() + " trees are stored.");
        return "redirect:/trees";
    }

    /** How far a large import is; until its end the browser asks again by itself, without any script. */
    @GetMapping("/import/{importId}")
    String progress(@PathVariable String importId, Model page, HttpServletResponse response) {
        Installs.Import one = installs.tell().get("/tree-imports/" + importId, Map.of(), Installs.Import.class);
        if (one.stored() == null && one.progress() != null) {
            response.setHeader("Refresh", "3");
        }
        page.addAttribute("one", one);
        return "import-progress";
    }

    private String mapping(Model page, String fileId, List<String> columns, String fileName, Entered entered) {
        page.addAttribute("columns", columns);
        page.addAttribute("fileId", fileId);
        page.addAttribute("fileName", fileName);
        page.addAttribute("sites", installs.sites());
        page.addAttribute("entered", entered);
        return "import-columns";
    }

    private static MultiValueMap<String, Object> part(byte[] bytes, String name) {
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(bytes) {
            @Override
            public String getFilename() {
                return name;
            }
        });
        return parts;
    }
}
