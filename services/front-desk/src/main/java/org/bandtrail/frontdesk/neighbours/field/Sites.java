package org.bandtrail.frontdesk.neighbours.field;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bandtrail.frontdesk.neighbours.Neighbour;
import org.bandtrail.frontdesk.neighbours.Rows;
import org.jspecify.annotations.Nullable;
import org.springframework.core.ParameterizedTypeReference;
import tools.jackson.databind.JsonNode;

/** The questions asked of site-installs about sites, consents and the map. */
public final class Sites {
    private static final ParameterizedTypeReference<Rows<Ground.Site>> SITES = new ParameterizedTypeReference<>() {};
    private static final ParameterizedTypeReference<Rows<Ground.Consent>> CONSENTS =
            new ParameterizedTypeReference<>() {};
    private final Neighbour neighbour;

    /** Site-installs behind this neighbour. */
    public Sites(Neighbour neighbour) {
        this.neighbour = neighbour;
    }

    /** For commands. */
    public Neighbour tell() {
        return neighbour;
    }

    /** All sites. */
    public List<Ground.Site> all() {
        return neighbour.everything(after -> neighbour.get("/sites", Rows.withAfter(Map.of(), after), SITES));
    }

    /** One site with all that is known. */
    public Ground.Whole one(String siteId) {
        return neighbour.get("/sites/" + siteId, Map.of(), Ground.Whole.class);
    }

    /** All sites that have a place, as GeoJSON. */
    public JsonNode geoJson() {
        return neighbour.get("/sites.geojson", Map.of(), JsonNode.class);
    }

    /** The kinds of hazards. */
    public List<Ground.HazardKind> hazardKinds() {
        return neighbour
                .get("/hazard-kinds", Map.of(), Ground.HazardKinds.class)
                .rows();
    }

    /** How every site stands on a day. */
    public Ground.Standings standings(LocalDate day) {
        List<Ground.Standing> all = new ArrayList<>();
        String after = "";
        Ground.Standings page;
        do {
            page = neighbour.get("/consents/standing", Map.of("on", day, "after", after), Ground.Standings.class);
            all.addAll(page.rows());
            after = page.next() == null ? "" : page.next();
        } while (page.next() != null);
        return new Ground.Standings(all, null, page.warning());
    }

    /** The consents of a site, the newest first. */
    public List<Ground.Consent> consents(String siteId) {
        return neighbour.get("/consents", Map.of("site", siteId), CONSENTS).rows();
    }

    /** All consents. */
    public List<Ground.Consent> allConsents() {
        return neighbour.everything(after -> neighbour.get("/consents", Rows.withAfter(Map.of(), after), CONSENTS));
    }

    /** One consent with its history. */
    public Ground.WholeConsent consent(String consentId) {
        return neighbour.get("/consents/" + consentId, Map.of(), Ground.WholeConsent.class);
    }

    /** Who may give a consent. */
    public Ground.Contact contact(String contactId) {
        return neighbour.get("/consent-contacts/" + contactId, Map.of(), Ground.Contact.class);
    }

    /** What stands in a box on a day; an empty box is the one around everything. */
    public Mapped map(Map<String, ? extends @Nullable Object> asked) {
        return neighbour.get("/map", asked, Mapped.class);
    }
}
