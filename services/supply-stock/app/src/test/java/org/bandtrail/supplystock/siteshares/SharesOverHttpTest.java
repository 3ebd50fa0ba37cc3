package org.bandtrail.supplystock.siteshares;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** Grants and who pays for a site, the whole way over HTTP. */
@OnPostgres
class SharesOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Projectors projectors;

    @Autowired
    SiteShares shares;

    @Test
    void a_site_is_paid_by_two_grants_and_a_rebuild_changes_nothing() {
        OverHttp anna = new OverHttp(port, key, "P-30");
        grant(anna, "SH-RIVER", "2026-12-31");
        grant(anna, "SH-TOWN", "2026-06-30");

        anna.ok("/site-shares", """
                {"siteId": "SH-MILL", "from": "2026-05",
                 "shares": [{"grantId": "SH-RIVER", "permille": 750}, {"grantId": "SH-TOWN", "permille": 250}]}""");
        assertThat(anna.refused(422, "/site-shares", """
                {"siteId": "SH-MILL", "from": "2026-07", "shares": [{"grantId": "SH-TOWN", "permille": 1000}]}""")).contains("it is good from 2026-01-01 to 2026-06-30");
        anna.refused(409, "/site-shares", """
                {"siteId": "SH-MILL", "from": "2026-07", "shares": [{"grantId": "SH-NONE", "permille": 1000}]}""");

        JsonNode row =
                anna.get("/site-shares?limit=1&after=SH-MILL").path("rows").get(0);
        assertThat(row.path("siteId").asString()).isEqualTo("SH-MILL");
        assertThat(row.path("shares").get(0).path("permille").asInt()).isEqualTo(750);
        var before = shares.all();
        projectors.rebuild("site-share");
        projectors.rebuild("grant");
        assertThat(shares.all()).isEqualTo(before);
    }

    @Test
    void terms_change_with_a_reason_and_the_old_ones_stay_readable() {
        OverHttp anna = new OverHttp(port, key, "P-30");
        grant(anna, "SH-LONG", "2026-06-30");

        anna.ok("/grants/SH-LONG/terms", """
                {"name": "Longer", "amount": {"minor": 900, "currency": "USD"}, "from": "2026-01-01",
                 "until": "2027-06-30", "reason": "letter"}""");
        JsonNode whole = anna.get("/grants/SH-LONG");
        assertThat(whole.path("grant").path("until").asString()).isEqualTo("2027-06-30");
        assertThat(whole.path("history")).hasSize(2);
        assertThat(whole.path("history").get(1).path("reason").asString()).isEqualTo("letter");
    }

    private static void grant(OverHttp client, String id, String until) {
        client.ok("/grants", """
                {"grantId": "%s", "name": "Grant %s", "amount": {"minor": 500000, "currency": "USD"},
                 "from": "2026-01-01", "until": "%s"}""".formatted(id, id, until));
    }
}
