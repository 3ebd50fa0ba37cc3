package org.bandtrail.frontdesk.bands;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bandtrail.frontdesk.neighbours.NeighbourRefused;
import org.bandtrail.frontdesk.neighbours.field.BandCare;
import org.bandtrail.frontdesk.neighbours.field.Inspections;
import org.bandtrail.frontdesk.neighbours.field.Installs;
import org.bandtrail.frontdesk.neighbours.field.Policies;
import org.bandtrail.frontdesk.neighbours.field.SiteInstalls;
import org.bandtrail.frontdesk.neighbours.field.TreeCare;
import org.bandtrail.frontdesk.neighbours.field.Visits;
import org.bandtrail.frontdesk.neighbours.money.Finance;
import org.bandtrail.frontdesk.neighbours.money.Spending;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The whole life of one band: plan, pieces, people, visits, catch, cost, photos, end. */
@Controller
class BandController {
    private static final int LINES = 500;
    private final SiteInstalls installs;
    private final Inspections inspections;
    private final BandCare care;
    private final Policies policies;
    private final TreeCare photos;
    private final Finance finance;

    BandController(
            SiteInstalls installs,
            Inspections inspections,
            BandCare care,
            Policies policies,
            TreeCare photos,
            Finance finance) {
        this.installs = installs;
        this.inspections = inspections;
        this.care = care;
        this.policies = policies;
        this.photos = photos;
        this.finance = finance;
    }

    @GetMapping("/bands/{bandId}")
    String band(@PathVariable String bandId, Model page) {
        Installs.Band band = installs.band(bandId);
        page.addAttribute("band", band);
        page.addAttribute(
                "kinds", policies.kinds().stream().collect(Collectors.toMap(Policies.Kind::code, Policies.Kind::name)));
        List<BandCare.MeshPiece> pieces =
                care.pieces(Map.of("q", band.bandId())).rows();
        page.addAttribute(
                "meshPiece",
                pieces.stream()
                        .filter(piece -> band.bandId().equals(piece.bandId()))
                        .findFirst()
                        .orElse(null));
        page.addAttribute("photos", photos.photos("band", band.bandId()));
        cost(page, band);
        Optional<Visits.WholeBand> looks = looks(bandId);
        page.addAttribute("looks", looks.map(Visits.WholeBand::band).orElse(null));
        page.addAttribute("visits", looks.map(Visits.WholeBand::visits).orElse(List.of()));
        page.addAttribute("flagWords", Answers.FLAGS);
        page.addAttribute("animal", looks.map(BandController::visitWithAnimal).orElse(null));
        page.addAttribute("stages", Answers.STAGES);
        page.addAttribute("answers", Answers.WORDS);
        return "band";
    }

    /** What the material of its tree cost; the books know trees and not bands, so all bands of the tree share it. */
    private void cost(Model page, Installs.Band band) {
        List<Spending.Line> lines = band.treeId() == null
                ? List.of()
                : finance.lines(Map.of("tree", band.treeId(), "limit", LINES)).rows();
        page.addAttribute("cost", TreeCost.of(lines));
        page.addAttribute(
                "sharing",
                band.treeId() == null
                        ? 1
                        : installs.allBands(Map.of("tree", band.treeId())).size());
    }

    /** Empty if inspections has not heard of the band yet, which takes a moment after it was fitted. */
    private Optional<Visits.WholeBand> looks(String bandId) {
        try {
            return Optional.of(inspections.band(bandId));
        } catch (NeighbourRefused unknown) {
            if (unknown.status() != 404) {
                throw unknown;
            }
            return Optional.empty();
        }
    }

    /** The latest visit that found an animal; null if none did. Visits come newest first. */
    private static @Nullable String visitWithAnimal(Visits.WholeBand band) {
        return band.visits().stream()
                .filter(visit -> visit.bycatch() != null && visit.bycatch().seen())
                .map(Visits.Visit::visitId)
                .findFirst()
                .orElse(null);
    }
}
