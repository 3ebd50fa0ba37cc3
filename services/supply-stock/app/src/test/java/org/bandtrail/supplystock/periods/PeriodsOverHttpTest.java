package org.bandtrail.supplystock.periods;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.List;
import org.bandtrail.supplystock.InJuly;
import org.bandtrail.supplystock.OverHttp;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import tools.jackson.databind.JsonNode;

/** A year's end in small: months close in order, by people, over HTTP. One set of books, so the steps have an order. */
@InJuly
@DirtiesContext
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class PeriodsOverHttpTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    Periods periods;

    private OverHttp anna = new OverHttp(0, "", "");

    @BeforeEach
    void anna_asks() {
        anna = new OverHttp(port, key, "P-30");
    }

    @Test
    @Order(1)
    void the_running_month_says_why_it_cannot_close() {
        JsonNode july = anna.get("/periods/2026-07");

        assertThat(july.path("mayClose").asBoolean()).isFalse();
        assertThat(july.path("why").asString()).isEqualTo("It has not ended.");
        assertThat(anna.refused(409, "/periods/2026-07/close", "{}")).contains("[2026-07] has not ended");
    }

    @Test
    @Order(2)
    void a_month_with_open_checks_closes_only_when_each_is_signed() {
        signAllOpen("2026-05");

        anna.ok("/periods/2026-05/close", "{}");
        assertThat(anna.get("/periods/2026-05").path("period").path("state").asString())
                .isEqualTo("closed");
        assertThat(periods.closed(YearMonth.of(2026, 4))).isTrue();
        assertThat(anna.get("/periods").path("toClose").asString()).isEqualTo("2026-06");
    }

    @Test
    @Order(3)
    void reopening_takes_a_second_person_and_what_happened_stays_readable() {
        anna.ok("/periods/2026-05/reopening", "{\"reason\": \"wrong delivery\"}");
        assertThat(anna.refused(409, "/periods/2026-05/reopen", "{}")).contains("another person has to grant it");

        anna.as("P-31").ok("/periods/2026-05/reopen", "{}");
        JsonNode may = anna.get("/periods/2026-05");
        assertThat(may.path("period").path("state").asString()).isEqualTo("open");
        assertThat(may.path("history"))
                .extracting(line -> line.path("what").asString())
                .endsWith("closed", "reopening asked", "reopened");
    }

    @Test
    @Order(4)
    void the_same_close_again_is_refused_and_a_gap_too() {
        signAllOpen("2026-05");
        anna.ok("/periods/2026-05/close", "{}");

        assertThat(anna.refused(409, "/periods/2026-05/close", "{}")).contains("closed already");
        assertThat(anna.refused(409, "/periods/2026-07/close", "{}")).contains("has not ended");
        assertThat(anna.refused(400, "/periods/MAY/close", "{}")).contains("MAY");
    }

    private void signAllOpen(String month) {
        List<String> open = anna.get("/periods/" + month)
                .path("checks")
                .valueStream()
                .filter(check -> !check.path("passes").asBoolean())
                .map(check -> check.path("check").asString())
                .toList();
        for (String check : open) {
            assertThat(anna.refused(409, "/periods/" + month + "/close", "{}")).contains("[" + check + "]");
            anna.ok("/periods/" + month + "/sign", "{\"check\": \"%s\", \"reason\": \"looked at\"}".formatted(check));
        }
    }
}
