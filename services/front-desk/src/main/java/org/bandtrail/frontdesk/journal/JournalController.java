package org.bandtrail.frontdesk.journal;

import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Accounts;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Months;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The journal: one month with its files, and the organisation's accounts. */
@Controller
class JournalController {
    private static final MediaType XLSX =
            MediaType.parseMediaType("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");
    private static final List<Accounts.Account> GENERAL = List.of(
            new Accounts.Account("stock", "", "Material in stock"),
            new Accounts.Account("site", "", "Material used at sites"),
            new Accounts.Account("written-off", "", "Material lost"),
            new Accounts.Account("written-down", "", "Material written down"),
            new Accounts.Account("slit", "", "Slitting under way"),
            new Accounts.Account("supplier", "", "Received, not invoiced"));

    private final Finance finance;

    JournalController(Finance finance) {
        this.finance = finance;
    }

    /** A month's journal; without a month the last closed one, else the running one. */
    @GetMapping("/journal")
    String journal(Model page, @RequestParam @Nullable YearMonth month) {
        Months.Page months = finance.months(null);
        YearMonth shown = month != null ? month : Objects.requireNonNullElse(months.closedThrough(), months.running());
        page.addAttribute("months", months.rows());
        page.addAttribute("month", shown);
        page.addAttribute("journal", finance.journal(shown));
        return "journal";
    }

    @GetMapping("/journal/{month:\\d{4}-\\d{2}}.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable YearMonth month, @PathVariable String ending) {
        boolean closed = finance.month(month).period().state().matches("closed|reopening asked");
        String name = "journal-" + month + (closed ? "" : "-preliminary") + "." + ending;
        MediaType type = ending.equals("xlsx") ? XLSX : new MediaType("text", "csv", StandardCharsets.UTF_8);
        return Listing.saved(name, type, finance.journalFile(month, ending));
    }

    @GetMapping("/journal/accounts")
    String accounts(Model page) {
        return mapping(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/journal/accounts")
    String map(@RequestParam MultiValueMap<String, String> sent, Model page, RedirectAttributes next) {
        Form form = new Form(sent);
        List<Accounts.Version> before = finance.accounts();
        List<Accounts.Account> accounts = new ArrayList<>();
        form.lines("ours", "number", "name").values().forEach(line -> {
            String ours = line.getOrDefault("ours", "");
            String number = line.getOrDefault("number", "");
            if (!ours.isEmpty() && !number.isEmpty()) {
                accounts.add(new Accounts.Account(ours, number, line.getOrDefault("name", "")));
            }
        });
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> finance.tell()
                        .send(
                                "/journal/accounts",
                                form.body()
                                        .text("from")
                                        .put("accounts", accounts)
                                        .done()));
        if (back.isPresent()) {
            return mapping(page, back.get());
        }
        Soon.until(() -> !finance.accounts().equals(before));
        next.addFlashAttribute("done", "The accounts hold from " + form.text("from") + " on.");
        return "redirect:/journal/accounts";
    }

    private String mapping(Model page, Entered entered) {
        List<Accounts.Version> versions = finance.accounts();
        List<Accounts.Account> current = new ArrayList<>(
                versions.isEmpty() ? GENERAL : versions.getFirst().accounts());
        // Three empty lines for accounts of one site or one kind of material.
        for (int more = 0; more < 3; more++) {
            current.add(new Accounts.Account("", "", ""));
        }
        page.addAttribute("versions", versions);
        page.addAttribute("current", current);
        page.addAttribute("entered", entered);
        return "journal-accounts";
    }
}
