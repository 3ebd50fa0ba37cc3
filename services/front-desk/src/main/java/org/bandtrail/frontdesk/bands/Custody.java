package org.bandtrail.frontdesk.bands;

import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.depot.Stock;
import org.bandtrail.frontdesk.neighbours.depot.SupplyStock;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.people.SignedIn;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What whoever is signed in carries, offered in the crew's forms. A reel that is not listed can still be written. */
@Component
class Custody {
    private final SupplyStock stock;
    private final BandCare care;

    Custody(SupplyStock stock, BandCare care) {
        this.care = care;
        this.stock = stock;
    }

    /** Puts the carried reels and batches, the crews and the own crew on the page. */
    void offer(Model page) {
        SignedIn reader = SignedIn.current();
        String personId = reader == null ? "" : reader.personId();
        Map<String, String> carried = Map.of("place", "crew:" + personId);
        List<Stock.Reel> reels = stock.allReels(carried);
        page.addAttribute("tapes", kind(reels, "TAPE"));
        page.addAttribute("meshes", kind(reels, "MESH"));
        page.addAttribute("carriedBatches", stock.allBatches(carried));
        List<Stock.Crew> crews = stock.crews();
        page.addAttribute("crews", crews);
        page.addAttribute(
                "ownCrew",
                crews.stream()
                        .filter(crew -> crew.people() != null && crew.people().contains(personId))
                        .map(Stock.Crew::crewId)
                        .findFirst()
                        .orElse(""));
        page.addAttribute("self", personId);
    }

    /** Sound pieces of mesh that whoever is signed in carries, to be used again. */
    List<BandCare.MeshPiece> meshPieces() {
        SignedIn reader = SignedIn.current();
        String place = "crew:" + (reader == null ? "" : reader.personId());
        return care.allPieces(Map.of("place", place, "state", "free")).stream()
                .filter(piece -> !"scrap".equals(piece.wear()))
                .toList();
    }

    private static List<Stock.Reel> kind(List<Stock.Reel> reels, String kind) {
        return reels.stream().filter(reel -> kind.equalsIgnoreCase(reel.kind())).toList();
    }
}
