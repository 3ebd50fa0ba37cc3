package org.bandtrail.frontdesk.meshpieces;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.bandtrail.frontdesk.neighbours.Soon;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.pages.Desk;
import org.bandtrail.frontdesk.pages.Entered;
import org.bandtrail.frontdesk.pages.Form;
import org.bandtrail.frontdesk.people.SignedIn;
import org.bandtrail.frontdesk.wording.Listing;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Mesh used again: the list, one piece, and what people say about it. */
@Controller
class MeshPiecesController {
    private static final int PAGE = 100;
    private static final String PATH = "/mesh-pieces/";
    private final BandCare care;
    private final SupplyStock stock;

    MeshPiecesController(BandCare care, SupplyStock stock) {
        this.care = care;
        this.stock = stock;
    }

    @GetMapping("/mesh-pieces")
    String pieces(
            Model page,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "free") String state,
            @RequestParam(defaultValue = "") String wear,
            @RequestParam(defaultValue = "") String after) {
        Map<String, Object> asked = new HashMap<>(asked(q, state, wear));
        asked.put("after", after);
        asked.put("limit", PAGE);
        Rows<BandCare.MeshPiece> pieces = care.pieces(asked);
        page.addAttribute("pieces", pieces.rows());
        page.addAttribute("next", pieces.next());
        page.addAttribute("q", q);
        page.addAttribute("state", state);
        page.addAttribute("wear", wear);
        page.addAttribute(
                "unseen",
                pieces.rows().stream().filter(piece -> piece.wear() == null).count());
        return "mesh-pieces";
    }

    private static Map<String, String> asked(String q, String state, String wear) {
        return Map.of("q", q, "state", state.equals("all") ? "" : state, "wear", wear);
    }

    @GetMapping("/mesh-pieces.{ending:csv|xlsx}")
    ResponseEntity<byte[]> file(
            @PathVariable String ending,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "all") String state,
            @RequestParam(defaultValue = "") String wear) {
        return new Listing<BandCare.MeshPiece>()
                .column("piece_id", BandCare.MeshPiece::pieceId)
                .column("reel_id", BandCare.MeshPiece::reelId)
                .column("length_mm", BandCare.MeshPiece::lengthMm)
                .column("width_mm", BandCare.MeshPiece::widthMm)
                .column("opening_mm", BandCare.MeshPiece::openingMm)
                .column("wear", BandCare.MeshPiece::wear)
                .column("band_id", BandCare.MeshPiece::bandId)
                .column("place", BandCare.MeshPiece::place)
                .column("since", BandCare.MeshPiece::since)
                .column("times_fitted", BandCare.MeshPiece::timesFitted)
                .file("mesh-pieces", ending, care.allPieces(asked(q, state, wear)));
    }

    @GetMapping("/mesh-pieces/{pieceId}")
    String piece(@PathVariable String pieceId, Model page) {
        return shown(page, pieceId, Entered.fresh(Map.of()));
    }

    @PostMapping("/mesh-pieces/{pieceId}/grade")
    String grade(
            @PathVariable String pieceId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> care.tell()
                        .send(
                                PATH + pieceId + "/grade",
                                form.body()
                                        .text("wear", "note")
                                        .length("length")
                                        .happened(desk.days())
                                        .done()));
        if (back.isPresent()) {
            return shown(page, pieceId, back.get());
        }
        Soon.until(() -> form.text("wear").equals(care.piece(pieceId).wear()));
        next.addFlashAttribute(
                "done",
                form.text("wear").equals("scrap")
                        ? "Piece " + pieceId + " is scrap. Put it into a waste bag and say so at the next look."
                        : "Piece " + pieceId + " is " + form.text("wear") + ".");
        return "redirect:" + PATH + pieceId;
    }

    @PostMapping("/mesh-pieces/{pieceId}/put")
    String put(
            @PathVariable String pieceId,
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        Optional<Entered> back = Entered.unlessDone(
                sent,
                () -> care.tell()
                        .send(
                                PATH + pieceId + "/put",
                                form.body().text("place").happened(desk.days()).done()));
        if (back.isPresent()) {
            return shown(page, pieceId, back.get());
        }
        Soon.until(() -> form.text("place").equals(care.piece(pieceId).place()));
        next.addFlashAttribute("done", "Piece " + pieceId + ": " + desk.place(form.text("place")) + ".");
        return "redirect:" + PATH + pieceId;
    }

    @GetMapping("/mesh-pieces/new")
    String form(Model page) {
        return found(page, Entered.fresh(Map.of()));
    }

    @PostMapping("/mesh-pieces")
    String write(
            @RequestParam MultiValueMap<String, String> sent,
            Model page,
            RedirectAttributes next,
            @ModelAttribute("desk") Desk desk) {
        Form form = new Form(sent);
        String[] made = {""};
        Optional<Entered> back = Entered.unlessDone(sent, () -> {
            Map<String, Object> piece = form.body()
                    .text("pieceId", "reelId", "wear", "place")
                    .length("length")
                    .happened(desk.days())
                    .done();
            made[0] =
                    care.tell().post("/mesh-pieces", piece, BandCare.Kept.class).pieceId();
        });
        if (back.isPresent()) {
            return found(page, back.get());
        }
        Soon.readable(() -> care.piece(made[0]));
        next.addFlashAttribute("done", "Piece " + made[0] + " is written down. Write its name on a tag.");
        return "redirect:" + PATH + made[0];
    }

    private String found(Model page, Entered entered) {
        places(page);
        page.addAttribute("entered", entered);
        return "mesh-piece-new";
    }

    private String shown(Model page, String pieceId, Entered entered) {
        page.addAttribute("piece", care.piece(pieceId));
        places(page);
        page.addAttribute("entered", entered);
        return "mesh-piece";
    }

    /** Where a piece can lie: with whoever is signed in, or in one of the depots. */
    private void places(Model page) {
        SignedIn reader = SignedIn.current();
        page.addAttribute("own", "crew:" + (reader == null ? "" : reader.personId()));
        page.addAttribute(
                "places",
                List.copyOf(stock.depots().stream()
                        .map(depot -> "depot:" + depot.depotId())
                        .toList()));
    }
}
