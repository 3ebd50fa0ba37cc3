package org.bandtrail.supplystock.variances;

import static org.assertj.core.api.Assertions.assertThat;

import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;

/** The worked example of the check values, section E3, read from the books: 20.00 for the price, 9.60 for the use. */
@OnPostgres
class VariancesOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    JdbcClient jdbc;

    private OverHttp http() {
        return new OverHttp(port, key, "P-LEAD");
    }

    @BeforeEach
    void an_item_at_24_a_metre() {
        jdbc.sql("""
                        INSERT INTO item (material, kind, name, reel_length_mm, unit_cost_minor, currency, lead_time_days,
                            lead_time_sd_days, service_level_permille)
                        VALUES ('VA-TAPE', 'TAPE', 'Tape', 50000, 1200, 'USD', 7, 1, 950) ON CONFLICT DO NOTHING""").update();
    }

    private void bill(long position, String purchase, long quantity, long net, String at) {
        jdbc.sql("""
                        INSERT INTO billed_line (position, invoice_id, invoice_line, purchase_id, line, quantity, net_minor,
                            at_receipt_minor, currency, verdict, by_person, billed_at)
                        VALUES (?, 'VA-INV', '1', ?, 1, ?, ?, 0, 'USD', 'price differs', 'P-09', ?::timestamptz)
                        ON CONFLICT DO NOTHING""").params(position, purchase, quantity, net, at).update();
    }

    private void ordered(String purchase, @Nullable Integer quote, long units) {
        jdbc.sql("""
                        INSERT INTO purchase VALUES (?, 'VA-SUP', 'VA-YARD', 'received', 'USD', '2031-05-20',
                            '2031-05-01T08:00:00Z', 'P-01', NULL) ON CONFLICT DO NOTHING""").param(purchase).update();
        jdbc.sql("""
                        INSERT INTO purchase_line (purchase_id, line, material, kind, unit, content, units, ordered,
                            unit_price, quote, remaining, committed)
                        VALUES (?, 1, 'VA-TAPE', 'TAPE', 'REEL', 50000000, ?, ?, 1240, ?, 0, 0)
                        ON CONFLICT DO NOTHING""")
                .param(purchase)
                .param(units)
                .param(units * 50_000)
                .param(quote)
                .update();
    }

    private JsonNode row(String path) {
        JsonNode rows = http().get(path).path("rows");
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void fifty_rolls_billed_at_12_40_were_quoted_at_12_00_from_forty_on() {
        jdbc.sql("""
                        INSERT INTO supplier_quote VALUES ('VA-SUP', 1, 'VA-TAPE', 'TAPE', 'REEL', 50000000, 1, 1, 9,
                            '2031-01-01', NULL, 'USD', '', false) ON CONFLICT DO NOTHING""").update();
        jdbc.sql("""
                        INSERT INTO supplier_price_break VALUES ('VA-SUP', 1, 1, 1300), ('VA-SUP', 1, 40, 1200),
                            ('VA-SUP', 1, 60, 1100) ON CONFLICT DO NOTHING""").update();
        ordered("VA-PO1", 1, 50);
        bill(-11, "VA-PO1", 50 * 50_000, 62_000, "2031-05-31T23:59:00Z");

        JsonNode may = row("/variances/prices?from=2031-05&through=2031-05");

        assertThat(may.path("standardMinor").asLong()).isEqualTo(60_000);
        assertThat(may.path("varianceMinor").asLong()).isEqualTo(2_000);
        assertThat(may.path("byQuote").asLong()).isEqualTo(1);
    }

    @Test
    void an_order_priced_by_hand_is_held_against_the_usual_cost_of_the_item() {
        ordered("VA-PO2", null, 2);
        bill(-12, "VA-PO2", 100_000, 2_480, "2031-06-01T00:00:00Z");

        JsonNode june = row("/variances/prices?from=2031-06&through=2031-06");

        assertThat(june.path("varianceMinor").asLong()).isEqualTo(80);
        assertThat(june.path("byQuote").asLong()).isZero();
        assertThat(http().get("/variances/prices?from=2031-07&through=2031-07").path("rows"))
                .isEmpty();
    }

    private void kit(String kit, @Nullable String settledAt, long planned, long fitted, long scrapped, long missing) {
        jdbc.sql("""
                        INSERT INTO kit_life (kit_id, depot_id, crew_id, person_id, began_at, handed_out_at)
                        VALUES (?, 'VA-YARD', 'VA-C', 'VA-P', '2031-05-02T06:00:00Z', '2031-05-02T07:00:00Z')""").param(kit).update();
        jdbc.sql("""
                        INSERT INTO kit_pick VALUES (?, 1, 'VA-R1', 'VA-TAPE', 'TAPE', 'depot:VA-YARD', 9000000, ?)""").params(kit, planned).update();
        jdbc.sql("INSERT INTO kit_line VALUES (?, 'VA-R1', 'VA-TAPE', 'TAPE', 9000000)")
                .param(kit)
                .update();
        jdbc.sql("""
                        INSERT INTO kit_line_settled VALUES (?, 'reel', 'VA-R1', 'VA-P', 9000000, ?, ?, ?, ?, 0, 0, 0)""")
                .params(kit, fitted, 9_000_000 - fitted - scrapped - missing, scrapped, missing)
                .update();
        jdbc.sql("INSERT INTO kit_settlement VALUES (?, 0, ?::timestamptz, 0, NULL)")
                .param(kit)
                .param(settledAt)
                .update();
    }

    @Test
    void a_thousand_and_forty_metres_used_by_settled_kits_against_a_thousand_planned() {
        kit("VA-K1", "2031-05-02T17:00:00Z", 600_000, 610_000, 10_000, 5_000);
        kit("VA-K2", "2031-05-03T17:00:00Z", 400_000, 420_000, 0, 0);
        kit("VA-K3", null, 700_000, 100_000, 0, 0);

        JsonNode may = row("/variances/uses?from=2031-05&through=2031-05");

        assertThat(may.path("kits").asLong()).as("the third is not settled").isEqualTo(2);
        assertThat(may.path("planned").asLong()).isEqualTo(1_000_000);
        assertThat(may.path("used").asLong()).isEqualTo(1_040_000);
        assertThat(may.path("missing").asLong()).isEqualTo(5_000);
        assertThat(may.path("varianceMinor").asLong()).isEqualTo(9_60);
    }
}
