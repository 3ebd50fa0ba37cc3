package org.bandtrail.supplystock.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.bandtrail.eventstore.Projectors;
import org.bandtrail.supplystock.OnPostgres;
import org.bandtrail.supplystock.OverHttp;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;

@OnPostgres
class DepotsToldTest {
    @LocalServerPort
    int port;

    @Value("${bandtrail.service-key}")
    String key = "";

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Projectors projectors;

    @Test
    void what_was_told_of_a_depot_adds_up_to_what_lies_there() {
        move("DT-A");

        assertThat(ToldDepots.there(jdbc, "DT-A"))
                .containsEntry("reel DT-A1 at depot:DT-A-S", 49_500L)
                .containsEntry("reel DT-A2 at set-aside:DT-A-N", 20_000L)
                .containsEntry("batch DT-A3 at depot:DT-A-N", 300L);
        assertThat(ToldDepots.told(jdbc, "DT-A")).isEqualTo(ToldDepots.there(jdbc, "DT-A"));
    }

    @Test
    void a_receipt_says_what_it_is_and_what_it_cost() {
        move("DT-B");

        assertThat(jdbc.sql("SELECT data->'receipt'->>'materialCode' || ' ' || (data->'receipt'->>'costMinor')"
                                + " FROM outbox WHERE subject = 'reel/DT-B1' AND data->'receipt' IS NOT NULL")
                        .query(String.class)
                        .list())
                .containsExactly("DT-B-T 1800");
    }

    @Test
    void what_was_never_told_is_told_from_the_history_and_nothing_twice() {
        move("DT-C");
        List<String> before = names();
        jdbc.sql("DELETE FROM outbox WHERE type IN ('supply-stock.depot-stock-changed.v1',"
                        + " 'supply-stock.holding-reserved.v1', 'supply-stock.holding-labelled.v1')"
                        + " AND position % 2 = 0")
                .update();
        assertThat(names()).hasSizeLessThan(before.size());

        projectors.rebuild("depot-history-told");

        assertThat(names()).isEqualTo(before);
        assertThat(ToldDepots.told(jdbc, "DT-C")).isEqualTo(ToldDepots.there(jdbc, "DT-C"));
    }

    private List<String> names() {
        return jdbc.sql("SELECT event_id::text FROM outbox ORDER BY 1")
                .query(String.class)
                .list();
    }

    private void move(String mark) {
        OverHttp http = new OverHttp(port, key, "P-01");
        http.ok("/items", """
                {"materialCode":"%1$s-T","kind":"TAPE","name":"Tape","width":"127 mm","reelLength":"50 m",
                 "unitCost":{"minor":4000,"currency":"USD"}}""".formatted(mark));
        http.ok("/items", """
                {"materialCode":"%1$s-P","kind":"FASTENER","name":"Pins","packSize":100,"unitCost":{"minor":3,"currency":"USD"}}""".formatted(mark));
        http.ok("/bins", """
                {"depotId":"%1$s-N","mark":"A-03","words":"tape"}""".formatted(mark));
        for (int reel = 1; reel <= 2; reel++) {
            http.ok("/reels", """
                    {"reelId":"%1$s%2$d","materialCode":"%1$s-T","depotId":"%1$s-N","length":"%3$d m",
                     "cost":{"minor":1800,"currency":"USD"},"happenedAt":"2026-05-04T06:00:00Z"}""".formatted(mark, reel, reel == 1 ? 50 : 20));
        }
        http.ok("/batches", """
                {"batchId":"%1$s3","materialCode":"%1$s-P","depotId":"%1$s-N","pieces":300,
                 "cost":{"minor":900,"currency":"USD"},"happenedAt":"2026-05-04T06:00:00Z"}""".formatted(mark));
        http.ok("/bins/put", """
                {"depotId":"%1$s-N","mark":"A-03","reelId":"%1$s1"}""".formatted(mark));
        http.ok("/set-aside", """
                {"depotId":"%1$s-N","reelId":"%1$s2","reason":"glue looks dry"}""".formatted(mark));
        http.ok("/transfers", """
                {"transferId":"%1$s-TR","from":"depot:%1$s-N","to":"depot:%1$s-S","carrier":"P-08",
                 "reels":["%1$s1"]}""".formatted(mark));
        http.ok("/transfers/%s-TR/arrive".formatted(mark), """
                {"reels":[{"reelId":"%1$s1","measured":"49.5 m"}]}""".formatted(mark));
        assertThat(projectors.caughtUp(Duration.ofSeconds(20))).isTrue();
    }
}
