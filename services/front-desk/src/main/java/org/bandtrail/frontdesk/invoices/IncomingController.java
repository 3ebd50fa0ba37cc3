package org.bandtrail.frontdesk.invoices;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Invoicing;
import org.bandtrail.frontdesk.neighbours.money.Papers;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** A paper on its way in: a file or rows by hand, the look at what would be stored, and keeping it. */
@Controller
class IncomingController {
    private static final String[] HEAD = {
        "number", "kind", "issued_on", "due_on", "currency", "order", "credits", "payable"
    };
    private static final String[] LINE = {
        "what", "line", "item", "sellers_item", "order_line", "quantity", "unit", "price", "amount", "tax_percent"
    };
    private static final TypeReference<Map<String, Object>> BODY = new TypeReference<>() {};
    private final Invoicing invoicing;
    private final JsonMapper json;

    IncomingController(Invoicing invoicing, JsonMapper json) {
        this.invoicing = invoicing;
        this.json = json;
    }

    @GetMapping("/invoices/new")
    String bringIn(Model page) {
        return form(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/invoices/file")
    String file(@RequestParam MultipartFile file, Model page) throws IOException {
        String name = Optional.ofNullable(file.getOriginalFilename()).orElse("file");
        Map<String, Object> look = new HashMap<>();
        look.put("content", Base64.getEncoder().encodeToString(file.getBytes()));
        look.put("source", name.isBlank() ? "file" : name);
        return look(page, look, Entered.fresh(Map.of()));
    }

    @PostMapping("/invoices/hand")
    String byHand(@RequestParam MultiValueMap<String, String> sent, Model page) {
        Map<String, Object> look = new HashMap<>();
        look.put("rows", rows(new Form(sent)));
        look.put("source", "entered by hand");
        if (new Form(sent).has("supplierId")) {
            look.put("supplierId", new Form(sent).text("supplierId"));
        }
        return look(page, look, new Entered(sent, null));
    }

    /** The same paper again with another supplier. */
    @PostMapping("/invoices/look")
    String again(@RequestParam String look, @RequestParam String supplierId, Model page) {
        Map<String, Object> body = new HashMap<>(json.readValue(look, BODY));
        body.put("supplierId", supplierId);
        return look(page, body, Entered.fresh(Map.of()));
    }

    @PostMapping("/invoices")
    String keep(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        List<Papers.Kept> kept = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> kept.add(invoicing
                        .tell()
                        .post(
                                "/invoices",
                                form.body()
                                        .text("supplierId", "source")
                                        .put("document", json.readTree(form.text("document")))
                                        .put("lines", Bills.of(form))
                                        .done(),
                                Papers.Kept.class)));
        if (back.isPresent()) {
            return look(page, json.readValue(form.text("look"), BODY), back.get());
        }
        Papers.Kept paper = kept.getFirst();
        Soon.readable(() -> invoicing.invoice(paper.invoiceId()));
        next.addFlashAttribute("done", "The invoice is kept as it was shown.");
        return "redirect:/invoices/" + paper.invoiceId();
    }

    /** Shows what would be stored, or the form again with every place that cannot be read. */
    private String look(Model page, Map<String, Object> look, Entered entered) {
        try {
            Papers.Preview preview = invoicing.preview(look);
            page.addAttribute("preview", preview);
            page.addAttribute("document", json.treeToValue(preview.document(), Papers.Document.class));
            page.addAttribute("documentText", preview.document().toString());
            page.addAttribute("look", json.writeValueAsString(look));
            page.addAttribute("suppliers", invoicing.suppliers());
            page.addAttribute("entered", entered);
            return "invoice-preview";
        } catch (NeighbourRefused refused) {
            return form(page, Entered.again(entered.values(), refused.problem()));
        }
    }

    private String form(Model page, Entered entered) {
        page.addAttribute("suppliers", invoicing.suppliers());
        page.addAttribute("entered", entered);
        return "invoice-new";
    }

    private static List<Map<String, String>> rows(Form form) {
        List<Map<String, String>> rows = new ArrayList<>();
        form.lines(LINE).forEach((number, parts) -> {
            Map<String, String> row = new LinkedHashMap<>(parts);
            boolean filled = parts.entrySet().stream()
                    .anyMatch(part -> !part.getKey().equals("what")
                            && !part.getKey().equals("unit")
                            && !part.getValue().isEmpty());
            if (filled) {
                for (String field : HEAD) {
                    row.put(field, form.text(field));
                }
                rows.add(row);
            }
        });
        return rows;
    }
}
