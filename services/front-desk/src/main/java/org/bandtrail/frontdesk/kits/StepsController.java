package org.bandtrail.frontdesk.kits;

import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.Kit;
import org.bandtrail.frontdesk.neighbours.depot.Kits;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.UnfitForm;
import org.bandtrail.frontdesk.people.SignedIn;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The steps of a reserved kit: hand out, sign, release. */
@Controller
class StepsController {
    private final Kits kits;
    private final OwnSignIn signIn;

    StepsController(Kits kits, OwnSignIn signIn) {
        this.kits = kits;
        this.signIn = signIn;
    }

    @PostMapping("/kits/{kitId}/hand-out")
    String handOut(
            @PathVariable String kitId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            SignedIn signer = form.has("signUser") ? signIn.of(form) : null;
            if (signer != null) {
                onlyTheHolder(kits.kit(kitId).kit(), signer, desk);
            }
            kits.tell()
                    .send(
                            "/kits/" + kitId + "/hand-out",
                            form.body().happened(desk.days()).done());
            if (signer != null) {
                sign(kitId, form, signer);
            }
        });
        if (back.isPresent()) {
            return again(kitId, back.get(), page);
        }
        boolean signs = form.has("signUser");
        Soon.until(() -> {
            var kit = kits.kit(kitId).kit();
            return kit.handedOutAt() != null && (!signs || kit.signedAt() != null);
        });
        next.addFlashAttribute(
                "done",
                "Kit %s is handed out%s.".formatted(kitId, signs ? " and signed for" : "; it is not signed for yet"));
        return "redirect:/kits/" + kitId;
    }

    @PostMapping("/kits/{kitId}/sign")
    String sign(
            @PathVariable String kitId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent, () -> sign(kitId, form, form.has("signUser") ? signIn.of(form) : SignedIn.current()));
        if (back.isPresent()) {
            return again(kitId, back.get(), page);
        }
        Soon.until(() -> kits.kit(kitId).kit().signedAt() != null);
        next.addFlashAttribute("done", "Kit %s is signed for.".formatted(kitId));
        return "redirect:/kits/" + kitId;
    }

    /** Before anything is stored, so that a kit is not out without the signature that was meant for it. */
    private static void onlyTheHolder(Kit.Life kit, SignedIn signer, Desk desk) {
        if (!kit.personId().equals(signer.personId())) {
            throw new UnfitForm("Kit [%s] is for %s, so %s cannot sign for it. %s signs with their own sign-in."
                    .formatted(
                            kit.kitId(),
                            desk.person(kit.personId()),
                            desk.person(signer.personId()),
                            desk.person(kit.personId())));
        }
    }

    private void sign(String kitId, Form form, @Nullable SignedIn signer) {
        Map<String, Object> body = Map.of("commandId", form.text("signCommandId"));
        if (signer == null) {
            kits.tell().send("/kits/" + kitId + "/sign", body);
        } else {
            kits.tell().sendAs(signer.personId(), "/kits/" + kitId + "/sign", body);
        }
    }

    @PostMapping("/kits/{kitId}/release")
    String release(
            @PathVariable String kitId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> kits.tell()
                        .send(
                                "/kits/" + kitId + "/release",
                                form.body().text("reason").done()));
        if (back.isPresent()) {
            return again(kitId, back.get(), page);
        }
        Soon.until(() -> kits.kit(kitId).kit().releasedAt() != null);
        next.addFlashAttribute("done", "Kit %s is free again; its reels can go out in other kits.".formatted(kitId));
        return "redirect:/kits/" + kitId;
    }

    private String again(String kitId, Entered entered, Model page) {
        return KitsController.shown(kits.kit(kitId), entered, page);
    }
}
