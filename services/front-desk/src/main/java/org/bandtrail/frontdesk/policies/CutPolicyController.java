package org.bandtrail.frontdesk.policies;

import java.util.List;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.wording.Listing;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** All versions of the policy, and one of them beside another. */
@Controller
class CutPolicyController {
    private final Policies policies;
    private final TreeCare care;

    CutPolicyController(Policies policies, TreeCare care) {
        this.policies = policies;
        this.care = care;
    }

    /** What another version has differently, in words. */
    record Changed(String label, String was, String now) {}

    @GetMapping("/policies")
    String all(Model page) {
        page.addAttribute("versions", policies.versions());
        page.addAttribute("now", policies.inForce().policy());
        page.addAttribute("pests", care.book().pestNames());
        return "policies";
    }

    @GetMapping("/policies.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(@PathVariable String ending) {
        Listing<Policies.Version> listing = new Listing<Policies.Version>()
                .column("version", Policies.Version::version)
                .column("programme", Policies.Version::programme)
                .column("pest", Policies.Version::pest)
                .column("valid_from", Policies.Version::validFrom)
                .column("valid_until", Policies.Version::validUntil);
        List<Policies.Version> versions = policies.versions();
        versions.getFirst()
                .values()
                .keySet()
                .forEach(name -> listing.column(
                        name.replaceAll("([A-Z])", "_$1").toLowerCase(java.util.Locale.ROOT),
                        version -> version.values().get(name)));
        return listing.column("source", Policies.Version::source)
                .column("reason", Policies.Version::reason)
                .column("published_by", Policies.Version::by)
                .column("published_at", Policies.Version::publishedAt)
                .file("policies", ending, versions);
    }

    @GetMapping("/policies/{version:[0-9]+}")
    String one(
            @PathVariable int version,
            @RequestParam(required = false) @Nullable Integer against,
            Model page,
            @ModelAttribute("desk") Desk desk) {
        Policies.Whole whole = policies.version(version, against);
        page.addAttribute("policy", whole.policy());
        page.addAttribute("against", whole.against());
        page.addAttribute("pests", care.book().pestNames());
        page.addAttribute("lines", ValueLine.of(whole.values(), desk.figures()));
        page.addAttribute(
                "changes",
                whole.differences().stream()
                        .map(each -> new Changed(
                                each.label(),
                                ValueLine.words(each.was(), each.unit(), desk.figures()),
                                ValueLine.words(each.now(), each.unit(), desk.figures())))
                        .toList());
        page.addAttribute("versions", policies.versions());
        return "policy";
    }
}
