package org.bandtrail.frontdesk.bands;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.Problem;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.pages.PleaseConfirm;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Fitting a band: find the tree, see the proposed lengths, write what was really used. */
@Controller
class FittingController {
    private static final int TREES = 30;
    private final SiteInstalls installs;
    private final Inspections inspections;
    private final Custody custody;
    private final TreeCare care;
    private final BandCare pieces;
    private final Policies policies;
    private final FitPhotos photos;

    FittingController(
            SiteInstalls installs,
            Inspections inspections,
            Custody custody,
            TreeCare care,
            BandCare pieces,
            Policies policies) {
        this.pieces = pieces;
        this.policies = policies;
        this.photos = new FitPhotos(care);
        this.care = care;
        this.installs = installs;
        this.inspections = inspections;
        this.custody = custody;
    }

    @GetMapping("/bands/new")
    String form(
            Model page,
            @ModelAttribute("desk") Desk desk,
            @RequestParam(defaultValue = "") String tree,
            @RequestParam(defaultValue = "") String girth,
            @RequestParam(defaultValue = "") String girthUnit,
            @RequestParam(defaultValue = "") String device,
            @RequestParam(defaultValue = "") String q) {
        if (tree.isBlank()) {
            page.addAttribute("q", q);
            page.addAttribute(
                    "trees",
                    q.isBlank()
                            ? List.of()
                            : installs.trees(Map.of("q", q, "limit", TREES)).rows());
            return "band-tree";
        }
        return shown(
                page,
                Entered.fresh(Map.of("treeId", tree, "girth", girth, "girthUnit", girthUnit, "device", device)),
                Form.withUnit(girth.strip(), girthUnit),
                desk);
    }

    @PostMapping("/bands")
    String fit(
            @RequestParam MultiValueMap<String, String> received,
            @RequestParam(required = false) @Nullable MultipartFile photo,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        // The picture is kept at once: a form that comes back with a question could not carry it.
        MultiValueMap<String, String> sent = new LinkedMultiValueMap<>(received);
        Optional<Entered> unfit = Entered.unlessDone(sent, () -> photos.keep(photo, sent));
        if (unfit.isPresent()) {
            return shown(page, unfit.get(), new Form(sent).length("girth"), desk);
        }
        Form form = new Form(sent);
        List<Installs.Flag> flags = new ArrayList<>();
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> band = band(form, desk);
            if (!form.text("confirmed").equals("yes")) {
                askAboutSlips(band);
            }
            Installs.Fitted fitted = installs.tell().post("/bands", band, Installs.Fitted.class);
            flags.addAll(fitted.flags() == null ? List.of() : fitted.flags());
        });
        if (back.isPresent()) {
            return shown(page, back.get(), form.length("girth"), desk);
        }
        String bandId = form.identity("bandId");
        Soon.readable(() -> installs.band(bandId));
        Soon.readable(() -> inspections.band(bandId));
        next.addFlashAttribute("done", "Band " + bandId + " is up on tree " + form.text("treeId") + ".");
        next.addFlashAttribute("flags", flags);
        return "redirect:/bands/" + bandId;
    }

    private void askAboutSlips(Map<String, Object> band) {
        List<Problem.Question> questions =
                installs.tell().post("/bands/check", band, Installs.Check.class).questions();
        if (!questions.isEmpty()) {
            throw new PleaseConfirm(questions);
        }
    }

    private Map<String, Object> band(Form form, Desk desk) {
        Form.Body body = form.body()
                .text("bandId", "treeId", "siteId", "crewId", "personId", "device", "deviation")
                .length("girth", "height", "seam")
                .whole("position")
                .put("tape", Map.of("reelId", form.identity("tapeReel"), "length", form.length("tapeLength")))
                .happened(desk.days());
        if (form.has("guardClosedBelow")) {
            body.put("guardClosedBelow", form.text("guardClosedBelow").equals("yes"));
        }
        if (!form.filled("photos").isEmpty()) {
            body.put("photos", form.filled("photos"));
        }
        if (form.has("meshPiece")) {
            BandCare.MeshPiece piece = pieces.piece(form.identity("meshPiece"));
            body.put("meshPiece", piece.pieceId());
            body.put("mesh", Map.of("reelId", piece.reelId(), "length", piece.lengthMm() + " mm"));
        } else if (form.has("meshReel")) {
            body.put("mesh", Map.of("reelId", form.identity("meshReel"), "length", form.length("meshLength")));
        }
        if (form.has("fastenerBatch")) {
            body.put(
                    "fasteners",
                    Map.of("batchId", form.identity("fastenerBatch"), "pieces", form.whole("fastenerPieces")));
        }
        return body.done();
    }

    private String shown(Model page, Entered entered, String girth, Desk desk) {
        Installs.Tree tree = installs.tree(entered.value("treeId"));
        page.addAttribute("tree", tree);
        page.addAttribute("checks", care.checks(tree.treeId()));
        String measure = desk.metric() ? "metric" : "imperial";
        Map<String, Object> asked = new HashMap<>();
        asked.put(girth.isBlank() ? "tree" : "girth", girth.isBlank() ? tree.treeId() : girth);
        asked.put("measure", measure);
        try {
            Installs.Proposal proposal = installs.proposal(asked);
            page.addAttribute("proposal", proposal);
            FitOffer.of(entered.or("device", FitOffer.USUAL), proposal, policies, measure)
                    .on(page);
        } catch (NeighbourRefused noProposal) {
            page.addAttribute("noProposal", noProposal.problem());
            FitOffer.nothing(entered.or("device", FitOffer.USUAL)).on(page);
        }
        page.addAttribute("kinds", policies.kinds());
        page.addAttribute("place", Long.toString(1 + Math.min(tree.bandsUp() == null ? 0 : tree.bandsUp(), 3)));
        page.addAttribute("carriedPieces", custody.meshPieces());
        custody.offer(page);
        page.addAttribute("entered", entered);
        return "band-new";
    }
}
