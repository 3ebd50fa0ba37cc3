package org.bandtrail.frontdesk.grants;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Funding;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who pays for a site from a month on. */
@Controller
class SharesController {
    private final Finance finance;
    private final SitesOfGrants sites;

    SharesController(Finance finance, SitesOfGrants sites) {
        this.finance = finance;
        this.sites = sites;
    }

    @GetMapping("/grants/shares/new")
    String fresh(Model page, @RequestParam(defaultValue = "") String site) {
        return shown(page, Entered.fresh(Map.of("siteId", site)));
    }

    @PostMapping("/grants/shares")
    String set(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        List<Funding.SiteShares> before = finance.shares();
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> finance.tell()
                        .send(
                                "/site-shares",
                                form.body()
                                        .text("siteId", "from")
                                        .put("shares", shares(form))
                                        .done()));
        if (back.isPresent()) {
            return shown(page, back.get());
        }
        Soon.until(() -> !finance.shares().equals(before));
        next.addFlashAttribute("done", "The shares of site " + form.identity("siteId") + " are set.");
        return "redirect:/grants";
    }

    private static List<Funding.Share> shares(Form form) {
        List<Funding.Share> shares = new ArrayList<>();
        form.lines("grantId", "percent").values().forEach(line -> {
            String grant = line.getOrDefault("grantId", "");
            String percent = line.getOrDefault("percent", "");
            if (grant.isEmpty() != percent.isEmpty()) {
                throw new UnfitForm("A share needs both a grant and a percentage; one line has only [%s]."
                        .formatted(grant + percent));
            }
            if (!grant.isEmpty()) {
                shares.add(new Funding.Share(grant, permille(percent)));
            }
        });
        return shares;
    }

    /** Percent with at most one decimal, as thousandths. */
    private static int permille(String percent) {
        try {
            return new BigDecimal(percent.replace(',', '.')).movePointRight(1).intValueExact();
        } catch (ArithmeticException | NumberFormatException unreadable) {
            throw new UnfitForm(
                    "[%s] is not a percentage. Write it like 66.7, with one decimal at most.".formatted(percent));
        }
    }

    private String shown(Model page, Entered entered) {
        page.addAttribute("grants", finance.grants());
        page.addAttribute("sites", sites.names());
        page.addAttribute("entered", entered);
        return "grant-shares";
    }
}
